using EditionRegister.Domain.Documents;
using EditionRegister.Domain.Editions;
using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.Works;
using EditionRegister.UseCases.Impressions;

namespace EditionRegister.UseCases.Wording;

/// <summary>What is said of grading, of a proposal, of signing, and of what became of sheets on the bench.</summary>
public static class SortingSaid
{
    /// <summary>3 sheets graded: registration 4, edges not looked at.</summary>
    public static string Graded(int sheets, GradeGiven grade)
    {
        string[] marks =
        [
            .. GradeAspect.All.Where(grade.Marks.ContainsKey).Select(aspect => $"{aspect.Word} {Counted.Figure(grade.Marks[aspect])}"),
            .. grade.NotLooked.Select(aspect => $"{aspect.Word} not looked at"),
        ];

        return $"{Counted.Sheets(sheets)} graded{(marks.Length == 0 ? "" : $": {string.Join(", ", marks)}")}.";
    }

    public static string Proposed(KeptProposed proposed) =>
        $"{Counted.Sheets(proposed.Proposal.Sheets.Count)} of {Counted.Figure(proposed.Proposal.Sheets.Count + proposed.Proposal.Others.Count)} proposed to be kept of {Run(proposed)}: {Places(proposed.Proposal.Sheets)} of the pile. Nothing was changed.";

    public static string Taken(KeptProposed proposed) =>
        $"{Counted.Sheets(proposed.Proposal.Sheets.Count)} of {Run(proposed)} kept as proposed: {Places(proposed.Proposal.Sheets)} of the pile. The others stay as they were sorted.";

    /// <summary>How the proposal was worked out, and what to mind about it.</summary>
    public static IEnumerable<string> HowProposed(Proposal proposal)
    {
        if (proposal.Middle is { } middle)
        {
            yield return $"Worked out so: a sheet lacks what its five marks are short of 5, and differs by the differences of its marks from those of the sheet in the middle. Of all sheets sheet {Counted.Figure(middle.Ordinal)} ({middle.ShownCode}) is the one around which as many as are wanted lack and differ least together: {Counted.Figure(proposal.Costs)}. What comes out the same goes by the order of the pile.";
        }

        if (proposal.NotFullyGraded is > 0 and var unknown)
        {
            yield return $"{Counted.Of(unknown, "proposed sheet is", "proposed sheets are")} not fully graded: what nobody looked at counts as nothing lacking, and such sheets come after all that are fully graded.";
        }

        if (proposal.Others.Count(one => !one.IsFullyGraded) is > 0 and var others)
        {
            yield return $"{Counted.Of(others, "sheet that is", "sheets that are")} not fully graded {(others == 1 ? "is" : "are")} not proposed; once graded, the proposal may be another.";
        }
    }

    /// <param name="seen">The session.</param>
    public static string Left(SigningSeen seen)
    {
        var numbered = Signing.Order(seen.Work, seen.Edition).Count;

        return $"{Called.Edition(seen.Work, seen.Edition)}: {(numbered == 0 ? "no sheet has a number yet" : $"{Counted.Figure(numbered - seen.Left.Count)} of {Counted.Figure(numbered)} signed")}{(seen.Left is [var next, ..] ? $". Next is {seen.Work.NumberingOf(next.Sheet)?.Spell(next.Sheet.Number) ?? next.Sheet.ShownCode} ({next.Sheet.ShownCode}): {Pencil(next.Pencil)}" : "")}.";
    }

    public static string Signed(Work work, IReadOnlyList<(Impression Sheet, PencilText Pencil)> signed) => signed is [var only]
        ? $"{only.Pencil.Number} of {Called.Work(work)} ({only.Sheet.ShownCode}) signed as spelled: {Pencil(only.Pencil)}."
        : $"{Counted.Sheets(signed.Count)} of {Called.Work(work)} signed as spelled.";

    /// <summary>The number at the left, the title in the middle, the signature at the right.</summary>
    public static string Pencil(PencilText pencil) => string.Join("  ·  ", new[] { pencil.Number, pencil.Title, pencil.Signature }.Where(part => part.Length > 0));

    /// <summary>The number on 7KQ4-M2X3 was 4/12 and is 5/12 since 2026-03-01: changed on the sheet itself.</summary>
    public static string Altered(Impression sheet, SheetChange change)
    {
        var what = change.What == "other" ? "Something" : $"The {change.What}";
        var became = (change.Was, change.Became) switch
        {
            ({ } was, { } now) => $"was “{was}” and is “{now}”",
            ({ } was, null) => $"was “{was}” and was taken off",
            (null, { } now) => $"is “{now}”, where nothing is known to have stood",
            _ => "was altered",
        };

        return $"{what} on {sheet.ShownCode} {became}, {change.Changed}: changed on the sheet itself.";
    }

    public static string AlterationTakenBack(Impression sheet) => $"The last change on {sheet.ShownCode} is taken back: it was never made.";

    /// <param name="old">The work it was printed as.</param>
    /// <param name="sheet">The sheet left out.</param>
    /// <param name="work">What came of it.</param>
    public static string WorkedOver(Work old, Impression sheet, Work work) =>
        $"{sheet.ShownCode} of {Called.Work(old)} was worked over by hand into work {Counted.Figure(work.Id)}, {Called.Work(work)}: a unique work, whose sheet has the code {work.Impressions[0].ShownCode}.";

    private static string Run(KeptProposed proposed) => $"print run {Counted.Figure(proposed.Run.Ordinal)} of {Called.Work(proposed.Work)}";

    /// <summary>1-9, 11.</summary>
    private static string Places(IReadOnlyList<ProposedSheet> sheets)
    {
        List<(int First, int Last)> stretches = [];

        foreach (var place in sheets.Select(one => one.Sheet.Ordinal))
        {
            if (stretches.Count > 0 && stretches[^1].Last == place - 1)
            {
                stretches[^1] = (stretches[^1].First, place);
            }
            else
            {
                stretches.Add((place, place));
            }
        }

        var said = string.Join(", ", stretches.Select(one => one.First == one.Last ? Counted.Figure(one.First) : $"{Counted.Figure(one.First)}-{Counted.Figure(one.Last)}"));

        return $"{(sheets.Count == 1 ? "sheet" : "sheets")} {said}";
    }
}

using EditionRegister.Store.Reading;
using EditionRegister.Tui.Pages;
using EditionRegister.UseCases.Looking;

namespace EditionRegister.Tui.PlanChest;

/// <summary>One impression whole as lines: what it is, what stands on it, its two chains, documents, findings, history.</summary>
internal static class ImpressionText
{
    private const int NewestShown = 5;

    // From here on two blocks of facts stand side by side and are still read without breaking.
    private const int Wide = 112;

    public static IReadOnlyList<Line> Head(ImpressionWhole whole, int width)
    {
        var name = Line.Of(whole.Name, Tone.Strong).Then($"   {whole.Seen.Impression.ShownCode}", Tone.Key);

        if (ImpressionFindings.InShort(whole) is not { } open)
        {
            return [name, Line.Empty];
        }

        var found = $"! {open}: see Findings below";

        return name.Width + 3 + found.Length <= width ? [name.Then("   " + found, Tone.Bad), Line.Empty] : [name, Line.Of(found, Tone.Bad), Line.Empty];
    }

    public static IReadOnlyList<Line> Of(ImpressionWhole whole, int width)
    {
        var (work, sheet) = (whole.Seen.Work, whole.Seen.Impression);

        return
        [
            .. Facts(whole, width),
            .. ImpressionTables.All(work, sheet).SkipLast(1).SelectMany(table => Section(table, width)),
            .. Section(ConditionShown.Reports(work, sheet), width),
            .. Compared(work, sheet, width),
            .. ImpressionFindings.Lines(whole, width),
            .. Section(ImpressionTables.KeptColumns(sheet), width),
            .. Newest(whole.Seen.History, width),
        ];
    }

    private static IReadOnlyList<Line> Facts(ImpressionWhole whole, int width)
    {
        var (work, sheet) = (whole.Seen.Work, whole.Seen.Impression);
        (string, string?)[] printed = [.. ImpressionFacts.OfTheWork(work), .. ImpressionFacts.OfTheRun(work, sheet, whole.Sizes)];
        var itself = ImpressionFacts.OfTheSheet(work, sheet);

        return width < Wide
            ? [.. FactLines.Of([.. itself, .. printed], width)]
            : FactLines.Beside(FactLines.Of(itself, (width / 2) - 2), FactLines.Of(printed, (width / 2) - 2), width);
    }

    private static IEnumerable<Line> Section(ShownTable table, int width) =>
        table.Rows.Count == 0 ? [] : [Line.Empty, Line.Of(table.Heading, Tone.Strong), .. TableLines.Of(table, width)];

    private static IEnumerable<Line> Compared(Domain.Works.Work work, Domain.Impressions.Impression sheet, int width) =>
        sheet.ConditionReports.LastOrDefault(report => report.Occasion == Domain.Conditions.ConditionOccasion.ComingBack) is { } back
            ? Wrap.Of(ConditionShown.Compared(work, sheet, back) ?? "", width).Select(line => Line.Of(line))
            : [];

    private static IEnumerable<Line> Newest(IReadOnlyList<LogbookLine> history, int width)
    {
        var lines = Section(Entries([.. history.Take(NewestShown)]), width);

        return history.Count <= NewestShown ? lines : lines.Append(Line.Of($"and {Counted.Of(history.Count - NewestShown, "older entry", "older entries")}: press h", Tone.Quiet));
    }

    /// <summary>2027-03-01 10:00, from the time as it is written in the logbook.</summary>
    public static string Minute(string at) => at.Length >= 16 ? at[..16].Replace('T', ' ') : at;

    private static ShownTable Entries(IReadOnlyList<LogbookLine> history) => new(
        "History of the work:",
        [new("entry", IsRight: true), new("recorded (UTC)"), new("done")],
        [.. history.Select(entry => (string[])[Counted.Figure(entry.N), Minute(entry.At), DeedInWords.Of(entry.Deed)])]);
}

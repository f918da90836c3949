using EditionRegister.Domain.Editions;
using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.Works;

namespace EditionRegister.UseCases.Wording;

/// <summary>How far a print run has come on its way from the press to the last signature, in a few words.</summary>
public static class HowFar
{
    /// <summary>16 pulled, 0 sorted; 12 kept, not declared; declared 12, 9 signed.</summary>
    public static string Of(Work work, PrintRun run)
    {
        var pile = work.Impressions.Where(sheet => sheet.Run == run.Id).ToList();
        var unsorted = pile.Count(sheet => sheet.Standing == "pulled");
        var heldOut = pile.Count(sheet => sheet.Standing == "held-out");
        var kept = pile.Count(sheet => sheet.IsKept);

        return run.IsUnderWay(pile.Count) ? $"under way, {Counted.Of(run.Passes.Count, "pass", "passes")} done"
            : pile.Count == 0 ? "no sheet in the pile"
            : unsorted > 0 ? $"{Counted.Figure(pile.Count - heldOut)} pulled, {Counted.Figure(pile.Count - heldOut - unsorted)} sorted"
            : EditionOf(work, pile) is { } edition ? Of(edition, pile)
            : kept > 0 ? $"{Counted.Figure(kept)} kept, not declared"
            : heldOut > 0 ? $"{Counted.Figure(heldOut)} held out, none kept"
            : "none kept";
    }

    /// <summary>Declared 12, 9 signed; of the sheets given.</summary>
    public static string Of(Edition edition, IReadOnlyList<Impression> sheets)
    {
        var numbered = sheets.Where(sheet => edition.Find(sheet.Numbering) is not null && sheet.Number is not null).ToList();
        var signed = numbered.Count(sheet => sheet.IsSigned);
        var declared = edition.Extent == "someone-elses" ? "someone else's"
            : edition.Size is { } size ? $"{(edition.IsClosed ? "closed" : "declared")} {Counted.Figure(size)}"
            : edition.IsClosed ? "closed"
            : "declared";

        return numbered.Count == 0 ? $"{declared}, not numbered"
            : signed == numbered.Count ? $"{declared}, all {Counted.Figure(signed)} signed"
            : $"{declared}, {Counted.Figure(signed)} of {Counted.Figure(numbered.Count)} signed";
    }

    /// <summary>The edition whose numbers the sheets bear; else the work's newest.</summary>
    private static Edition? EditionOf(Work work, IReadOnlyList<Impression> pile) =>
        pile.Select(work.EditionOf).FirstOrDefault(edition => edition is not null) ?? (work.Editions is [.., var newest] ? newest : null);
}

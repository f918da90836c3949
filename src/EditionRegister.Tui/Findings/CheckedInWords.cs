using EditionRegister.Tui.Pages;

namespace EditionRegister.Tui.Findings;

/// <summary>Says how far a check is, and what came of the last one.</summary>
internal static class CheckedInWords
{
    public static IReadOnlyList<Line> Of(Checking checking, bool accepted, int width) =>
    [
        .. checking.IsUnderway ? [Line.Of(Underway(checking), Tone.Quiet)] : Array.Empty<Line>(),
        .. checking.Last is not { } last ? []
            : accepted ? Accepted(last)
            : Open(last, width),
    ];

    private static string Underway(Checking checking) => checking.Works is { } works
        ? $"checking… {Counted.Figure(works.Done)} of {Counted.Of(works.All, "work")}"
        : "checking… the file and its logbook first. Other rooms can be used meanwhile.";

    private static IEnumerable<Line> Accepted(Checked last) => last.Accepted.Count == 0 ? [] :
        [$"{Counted.Of(last.Accepted.Count, "finding")} accepted: counted no more, and back when {(last.Accepted.Count == 1 ? "its" : "their")} facts change."];

    private static IEnumerable<Line> Open(Checked last, int width)
    {
        var counts = Counts(last);
        yield return Line.Of(counts, last.Contradictions > 0 ? Tone.Bad : last.Queries > 0 ? Tone.Warning : Tone.Good).Then(CheckedUpTo(last, width - counts.Length));

        if (last.OfTheFile > 0)
        {
            yield return Line.Of($"! {Counted.Figure(last.OfTheFile)} of the file itself, which no edit mends: begin with those, by Enter.", Tone.Bad);
        }

        if (last.IsShortened)
        {
            yield return Line.Of($"The first {Counted.Figure(Checked.MostOfEach)} of each kind are listed.", Tone.Quiet);
        }
    }

    private static string Counts(Checked last) => last is { Contradictions: 0, Queries: 0 }
        ? $"No contradictions, no queries{(last.Notes > 0 ? $", {Counted.Of(last.Notes, "note")}" : "")}"
        : $"{Counted.Of(last.Contradictions, "contradiction")}, {Counted.Of(last.Queries, "query", "queries")}, {Counted.Of(last.Notes, "note")}";

    private static string CheckedUpTo(Checked last, int columns)
    {
        if (last.Head is not { } head)
        {
            return ": the logbook cannot be read";
        }

        var upTo = $": checked {Counted.Of(head.N, "entry", "entries")}, head ";

        return upTo + HeadShown.Begun(head.Head, columns - upTo.Length);
    }
}

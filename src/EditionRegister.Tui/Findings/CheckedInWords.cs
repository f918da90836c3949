using EditionRegister.Tui.Pages;

namespace EditionRegister.Tui.Findings;

/// <summary>Says how far a check is, and what came of the last one.</summary>
internal static class CheckedInWords
{
    private const int GroupsShown = 2;

    public static IReadOnlyList<Line> Of(Checking checking, bool accepted, int width) =>
    [
        .. checking.IsUnderway ? [Line.Of(Underway(checking), Tone.Quiet)] : Array.Empty<Line>(),
        .. checking.Last is not { } last ? []
            : accepted ? [Line.Of(Accepted(last))]
            : Open(last, width),
    ];

    private static string Underway(Checking checking) => checking.Works is { } works
        ? $"checking… {Counted.Figure(works.Done)} of {Counted.Of(works.All, "work")}"
        : "checking… the file and its logbook first";

    private static string Accepted(Checked last) => $"{Counted.Of(last.Accepted.Count, "finding")} accepted with a reason. They count no more, and return when their facts change.";

    private static IEnumerable<Line> Open(Checked last, int width)
    {
        yield return Line.Of(Counts(last), last.Contradictions > 0 ? Tone.Bad : last.Queries > 0 ? Tone.Warning : Tone.Good).Then(CheckedUpTo(last));

        if (last.OfTheFile > 0)
        {
            foreach (var line in Wrap.Of($"! {Counted.Of(last.OfTheFile, "finding")} of the file itself: something has changed it behind the program's back. Enter on one says what to do first.", width))
            {
                yield return Line.Of(line, Tone.Bad);
            }
        }

        if (last.IsShortened)
        {
            yield return Line.Of($"The first {Counted.Figure(Checked.MostOfEach)} of each kind are listed.", Tone.Quiet);
        }
    }

    private static string Counts(Checked last) => last is { Contradictions: 0, Queries: 0 }
        ? $"No contradictions, no queries{(last.Notes > 0 ? $", {Counted.Of(last.Notes, "note")}" : "")}"
        : $"{Counted.Of(last.Contradictions, "contradiction")}, {Counted.Of(last.Queries, "query", "queries")}, {Counted.Of(last.Notes, "note")}";

    private static string CheckedUpTo(Checked last) => last.Head is { } head
        ? $": checked {Counted.Of(head.N, "entry", "entries")}, head {HeadShown.Grouped(head.Head, GroupsShown)}"
        : ": the logbook cannot be read";
}

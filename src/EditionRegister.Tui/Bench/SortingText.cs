using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.Works;
using EditionRegister.Tui.Pages;

namespace EditionRegister.Tui.Bench;

/// <summary>What stands above and below the pile while it is sorted.</summary>
internal static class SortingText
{
    public static IReadOnlyList<Line> Head(Work work, PrintRun run, IReadOnlyList<Impression> pile, int width) =>
    [
        .. Wrap.Of($"{Called.Work(work)}: {RunBalance.Of(work, run)}.", width).Select(line => (Line)line),
        .. Wrap.Of($"{RunBalance.Missing(work, run)} {Sorted(pile)}", width).Select(line => Line.Of(line, Tone.Quiet)),
        .. HeldOut(run, pile) is { } more ? Wrap.Of(more, width).Select(line => Line.Of(line, Tone.Warning)) : [],
        Line.Empty,
    ];

    /// <param name="work">The work.</param>
    /// <param name="pile">The pulls of the run.</param>
    /// <param name="current">Which of them the cursor is on.</param>
    /// <param name="marked">How many are marked.</param>
    /// <param name="isThrough">The last one has been sorted.</param>
    /// <param name="width">Columns.</param>
    public static IReadOnlyList<Line> Foot(Work work, IReadOnlyList<Impression> pile, int current, int marked, bool isThrough, int width) =>
    [
        .. Wrap.Of(PileTray.Told(work, pile[current], pile.Count), width).Select(line => Line.Of(line, Tone.Strong)),
        isThrough ? Line.Of("The pile is through. Esc goes back, Left looks again, Backspace takes it back.", Tone.Good)
            : marked > 0 ? Line.Of($"{Counted.Sheets(marked)} marked: the next key sorts them all.", Tone.Warning)
            : Line.Empty,
        .. Wrap.Of(PileTray.Legend, width).Select(line => Line.Of(line, Tone.Quiet)),
        .. pile.Any(sheet => sheet.Grade is not null) ? [Line.Of("· graded: registration, inking, edges, cleanness, likeness", Tone.Quiet)] : Array.Empty<Line>(),
    ];

    /// <summary>Where more lie held out than were counted when the run was recorded; null where they agree.</summary>
    public static string? HeldOut(PrintRun run, IReadOnlyList<Impression> pile) =>
        run.HeldOut is { } counted && pile.Count(sheet => sheet.Standing == "held-out") is var held && held > counted
            ? $"{Counted.Figure(held)} are held out, and {Counted.Figure(counted)} {(counted == 1 ? "was" : "were")} counted in printing: f puts the count right."
            : null;

    private static string Sorted(IReadOnlyList<Impression> pile)
    {
        var left = pile.Count(sheet => sheet.Standing == "pulled");
        var counts = pile.CountBy(sheet => sheet.Standing).Where(same => same.Key != "pulled").Select(same => $"{Counted.Figure(same.Value)} {Called.Plain(same.Key)}");

        return $"{(left == 0 ? "All are sorted" : $"{Counted.Figure(left)} not sorted yet")}{string.Concat(counts.Select(count => $", {count}"))}.";
    }
}

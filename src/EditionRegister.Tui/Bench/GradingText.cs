using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.Text;
using EditionRegister.Domain.Works;
using EditionRegister.Tui.Pages;

namespace EditionRegister.Tui.Bench;

/// <summary>What the grading page says of the sheet under the eyes, aspect by aspect.</summary>
internal static class GradingText
{
    private const int Names = 14;
    private const int Marks = 13;

    public static IReadOnlyList<Line> Head(Work work, IReadOnlyList<Impression> pile, string? against, int width)
    {
        var graded = pile.Count(sheet => GradeAspect.All.All(aspect => aspect.MarkOf(sheet.Grade) is not null));
        var beside = GradeShown.Against(against ?? "unknown") is { } told ? $"held {told}" : "b says what they are held against";

        return [.. Wrap.Of($"{Called.Work(work)}: {Counted.Figure(graded)} of {Counted.Sheets(pile.Count)} fully graded; {beside}.", width).Select(line => (Line)line), Line.Empty];
    }

    public static IReadOnlyList<Line> Sheet(Work work, Impression sheet, int pile, GradingHand hand, int width) =>
    [
        .. Wrap.Of(PileTray.Told(work, sheet, pile), width).Select(line => Line.Of(line, Tone.Strong)),
        Line.Empty,
        .. GradeAspect.All.Select((aspect, at) => Row(aspect, at == hand.Asked, hand.MarkOf(aspect, sheet), hand.IsUnwritten(aspect), width)),
        Line.Empty,
        .. sheet.Grade?.Note is { } note ? Wrap.Of($"Note: {note}", width).Select(line => Line.Of(line, Tone.Quiet)) : [],
        new Line([.. GradingMarks.All.SelectMany(one => new[] { new Bit($"  {one.Key} ", Tone.Key), new Bit($"{Counted.Figure(one.Mark)} {one.Name}", Tone.Quiet) })]),
        Line.Of(hand.HasUnwritten ? "Not written yet: that is done with the fifth mark, or when you leave the sheet." : "", Tone.Warning),
    ];

    public static IReadOnlyList<Line> Through(int width) =>
        [.. Wrap.Of("The pile is through. Left looks again; Esc goes back, and p on the sorting page proposes which sheets to keep.", width).Select(line => Line.Of(line, Tone.Good))];

    private static Line Row(GradeAspect aspect, bool isAsked, int? mark, bool isNew, int width)
    {
        var shown = mark is { } given ? $"{Counted.Figure(given)} {GradingMarks.NameOf(given)}" : isNew ? "nobody looked" : "–";
        var asks = TextWidth.Cut($"{aspect.Asks}?", Math.Max(0, width - 2 - Names - Marks - 2));

        return Line.Of(isAsked ? "› " : "  ", Tone.Key)
            .Then(TextWidth.Pad(aspect.Word, Names), isAsked ? Tone.Here : Tone.Plain)
            .Then(TextWidth.Pad(TextWidth.Cut(shown, Marks), Marks), mark is null ? Tone.Quiet : Tone.Strong)
            .Then("  " + asks, Tone.Quiet);
    }
}

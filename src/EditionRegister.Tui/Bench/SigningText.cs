using EditionRegister.Domain.Documents;
using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.Works;
using EditionRegister.Tui.Pages;

namespace EditionRegister.Tui.Bench;

/// <summary>What the signing page says of one sheet, and when all are done.</summary>
internal static class SigningText
{
    public static string Left(int left) => left == 0 ? "None is left in this session." : $"{Counted.Figure(left)} left in this session.";

    /// <param name="work">The work.</param>
    /// <param name="sheet">The sheet that comes next.</param>
    /// <param name="pencil">Its line.</param>
    /// <param name="wasHere">It was recorded in this session already.</param>
    /// <param name="width">Columns.</param>
    public static IReadOnlyList<Line> Sheet(Work work, Impression sheet, PencilText pencil, bool wasHere, int width)
    {
        var run = work.RunOf(sheet);
        var lies = run is null ? "" : $", sheet {Counted.Figure(sheet.Ordinal)} of the pile{(work.Runs.Count > 1 ? $" of print run {Counted.Figure(run.Ordinal)}" : "")}";
        var asked = sheet.IsSigned ? $"{work.NumberOf(sheet)} is signed{(wasHere ? ": n takes it back, y goes on." : " already: y goes on.")}" : $"Next sheet is {pencil.Number}. Signed?";

        return
        [
            .. Wrap.Of(asked, width).Select(line => Line.Of(line, sheet.IsSigned ? Tone.Good : Tone.Strong)),
            Line.Of($"Code {sheet.ShownCode}{lies}", Tone.Quiet),
            Line.Empty,
            .. PencilDrawn.Sheet(pencil, width),
            Line.Empty,
            .. Answers(sheet.IsSigned),
        ];
    }

    public static IReadOnlyList<Line> Done(int count, bool canNumber, int width) =>
    [
        .. Wrap.Of(count == 0 ? "No sheet waits to be signed." : "Every sheet of this session has been before you.", width).Select(line => Line.Of(line, Tone.Strong)),
        .. canNumber ? Wrap.Of("There are kept sheets and open numbers left: g gives them.", width).Select(line => (Line)line) : [],
        .. Wrap.Of("Esc goes back to the work; d there prints certificates and labels.", width).Select(line => (Line)line),
    ];

    private static IEnumerable<Line> Answers(bool isSigned)
    {
        if (isSigned)
        {
            yield break;
        }

        yield return Line.Of("    y  ", Tone.Key).Then("it stands there as drawn, signed by hand");
        yield return Line.Of("    n  ", Tone.Key).Then("leave it unsigned");
        yield return Line.Of("    s  ", Tone.Key).Then("skip it for now: it comes again at the end");
        yield return Line.Of("    m  ", Tone.Key).Then("the pencil slipped: record what really stands there");
    }
}

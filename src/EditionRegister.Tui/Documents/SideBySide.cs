using EditionRegister.Domain.Text;
using EditionRegister.Tui.Pages;

namespace EditionRegister.Tui.Documents;

/// <summary>Texts beside each other in columns of their own, each wrapped in its column: nothing that will be printed is cut.</summary>
internal static class SideBySide
{
    private const int Gap = 2;

    public static IEnumerable<Line> Of(params IReadOnlyList<(string Text, int Columns, Tone Tone)> cells)
    {
        var wrapped = cells.Select(cell => Wrap.Of(cell.Text, cell.Columns)).ToList();

        for (var row = 0; row < wrapped.Max(lines => lines.Count); row++)
        {
            yield return new Line([.. cells.Select((cell, at) => new Bit(TextWidth.Pad(row < wrapped[at].Count ? SafeText.Show(wrapped[at][row]) : "", cell.Columns + Gap), cell.Tone))]);
        }
    }

    /// <summary>A label in a column of its own, then a value that has the rest of the line.</summary>
    public static IEnumerable<Line> Fact(string label, string value, int labelColumns, int width) =>
        Of((label, labelColumns, Tone.Quiet), (value, Math.Max(10, width - labelColumns - (2 * Gap)), Tone.Plain));
}

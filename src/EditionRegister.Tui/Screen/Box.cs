using EditionRegister.Domain.Text;
using EditionRegister.Tui.Pages;

namespace EditionRegister.Tui.Screen;

/// <summary>Lines in a frame with a title: what lies over a page.</summary>
internal static class Box
{
    public static IReadOnlyList<Line> Around(string title, IReadOnlyList<Line> lines, int width)
    {
        var inner = Math.Max(1, width - 4);
        var head = TextWidth.Cut(SafeText.Show(title), inner - 2);

        return
        [
            Line.Of("┌─ ").Then(head, Tone.Strong).Then(" " + new string('─', Math.Max(0, width - 5 - TextWidth.Of(head))) + "┐"),
            .. lines.Select(line => Framed(line, inner)),
            Line.Of("└" + new string('─', Math.Max(0, width - 2)) + "┘"),
        ];
    }

    private static Line Framed(Line line, int inner)
    {
        List<Bit> bits = [new("│ ")];
        var left = inner;

        foreach (var bit in line.Bits)
        {
            var text = TextWidth.Cut(SafeText.Show(bit.Text), left);
            left -= TextWidth.Of(text);
            bits.Add(bit with { Text = text });
        }

        return new Line([.. bits, new Bit(new string(' ', left) + " │")]);
    }
}

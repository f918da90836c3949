using EditionRegister.Domain.Documents;
using EditionRegister.Domain.Text;
using EditionRegister.Tui.Pages;

namespace EditionRegister.Tui.Bench;

/// <summary>A pencil line as it stands under the image: the number at the left, the title in the middle, the signature at the right.</summary>
internal static class PencilDrawn
{
    private const string Nothing = "–";

    /// <param name="text">The three parts.</param>
    /// <param name="width">Columns to draw it across.</param>
    public static Line Across(PencilText text, int width)
    {
        ArgumentNullException.ThrowIfNull(text);

        var number = TextWidth.Cut(Shown(text.Number), Math.Max(1, width / 3));
        var signature = TextWidth.Cut(Shown(text.Signature), Math.Max(1, width / 3));
        var (atLeft, atRight) = (TextWidth.Of(number), TextWidth.Of(signature));
        var title = TextWidth.Cut(Shown(text.Title), Math.Max(1, width - atLeft - atRight - 4));
        var wide = TextWidth.Of(title);
        // In the middle of the sheet, unless a long number or signature leaves no room there.
        var begin = Math.Clamp((width - wide) / 2, atLeft + 2, Math.Max(atLeft + 2, width - atRight - 2 - wide));

        return Line.Of(number, Tone.Strong)
            .Then(new string(' ', begin - atLeft))
            .Then(title)
            .Then(new string(' ', Math.Max(1, width - atRight - begin - wide)))
            .Then(signature);
    }

    /// <summary>The foot of a printed sheet: the image above, the line under it.</summary>
    public static IReadOnlyList<Line> Sheet(PencilText text, int width)
    {
        var inner = Math.Max(20, width - 8);

        return
        [
            Line.Of($"    │{new string(' ', inner - 2)}│", Tone.Quiet),
            Line.Of($"    └{new string('─', inner - 2)}┘", Tone.Quiet),
            Line.Of("    ").Then(Across(text, inner)),
        ];
    }

    private static Line Then(this Line line, Line more) => new([.. line.Bits, .. more.Bits]);

    private static string Shown(string text) => text.Length == 0 ? Nothing : SafeText.Show(text);
}

using EditionRegister.Domain.Text;

namespace EditionRegister.Tui.Pages;

/// <summary>What is known of one thing, a label before each value; long values go on under themselves.</summary>
internal static class FactLines
{
    private const int Gap = 2;

    /// <param name="facts">What is not known (null) is left out.</param>
    /// <param name="width">Terminal columns.</param>
    public static IReadOnlyList<Line> Of(IEnumerable<(string Label, string? Value)> facts, int width)
    {
        var known = facts.Where(fact => fact.Value is not null).ToList();
        var label = known.Count == 0 ? 0 : known.Max(fact => TextWidth.Of(fact.Label)) + Gap;

        return
        [
            .. known.SelectMany(fact => Wrap.Of(fact.Value!, Math.Max(1, width - label))
                .Select((value, at) => Line.Fact(at == 0 ? fact.Label : "", value, label))),
        ];
    }

    /// <summary>Two blocks side by side, each in its half of the width.</summary>
    public static IReadOnlyList<Line> Beside(IReadOnlyList<Line> left, IReadOnlyList<Line> right, int width)
    {
        var half = width / 2;

        return
        [
            .. Enumerable.Range(0, Math.Max(left.Count, right.Count)).Select(at =>
            {
                var begins = at < left.Count ? left[at] : Line.Empty;

                return at >= right.Count ? begins : new Line([.. begins.Bits, new Bit(new string(' ', Math.Max(0, half - begins.Width))), .. right[at].Bits]);
            }),
        ];
    }
}

using EditionRegister.Domain.Editions;
using EditionRegister.Domain.Text;
using EditionRegister.Tui.Pages;

namespace EditionRegister.Tui.PlanChest;

/// <summary>What an edition comes to, in two columns read downwards; values stand under each other where there is room.</summary>
internal static class EditionTotalsShown
{
    private const int Gap = 3;

    public static IEnumerable<Line> Of(IReadOnlyList<MapTotal> totals, int width)
    {
        var half = (totals.Count + 1) / 2;
        var left = Column([.. totals.Take(half)], width / 2);
        var wide = left.Select(item => item.Width).DefaultIfEmpty(0).Max();
        var right = Column([.. totals.Skip(half)], width - wide - Gap);

        for (var row = 0; row < half; row++)
        {
            yield return row < right.Count ? new Line([.. left[row].Bits, new Bit(new string(' ', wide - left[row].Width + Gap)), .. right[row].Bits]) : left[row];
        }
    }

    private static List<Line> Column(List<MapTotal> totals, int width)
    {
        var labels = totals.Select(total => TextWidth.Of(total.Label)).DefaultIfEmpty(0).Max();
        var fits = totals.All(total => labels + 2 + TextWidth.Of(total.Value) <= width);

        return [.. totals.Select(total => Line.Of(fits ? TextWidth.Pad(total.Label, labels) : total.Label, Tone.Quiet).Then("  " + total.Value))];
    }
}

using EditionRegister.Domain.Editions;
using EditionRegister.Domain.Text;
using EditionRegister.Tui.Pages;

namespace EditionRegister.Tui.PlanChest;

/// <summary>What an edition comes to, in two columns read downwards; values stand under each other where there is room.</summary>
internal static class EditionTotalsShown
{
    private const int Gap = 3;

    /// <summary>What is too long for half a line has one of its own below.</summary>
    public static IEnumerable<Line> Of(IReadOnlyList<MapTotal> totals, int width) =>
        [.. InColumns([.. totals.Where(total => IsShort(total, width))], width), .. totals.Where(total => !IsShort(total, width)).Select(total => Long(total, width))];

    private static bool IsShort(MapTotal total, int width) => TextWidth.Of(total.Label) + 2 + TextWidth.Of(total.Value) <= width / 2;

    private static Line Long(MapTotal total, int width) =>
        Line.Of(total.Label, Tone.Quiet).Then("  " + TextWidth.Cut(SafeText.Show(total.Value), Math.Max(1, width - TextWidth.Of(total.Label) - 2)));

    private static IEnumerable<Line> InColumns(IReadOnlyList<MapTotal> totals, int width)
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

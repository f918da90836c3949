using System.Globalization;
using EditionRegister.Domain.Editions;

namespace EditionRegister.Domain.Integrity;

/// <summary>Figures, lists and runs of numbers as sentences have them, the same in every culture.</summary>
internal static class InWords
{
    public static string Figure(long number) => number.ToString(CultureInfo.InvariantCulture);

    /// <summary>Millimetres to a tenth.</summary>
    public static string Millimetres(long micrometres) => Math.Round(micrometres / 1_000m, 1).ToString("0.#", CultureInfo.InvariantCulture);

    public static string Count(long number, string one, string many) => $"{Figure(number)} {(number == 1 ? one : many)}";

    /// <summary>a, b and c.</summary>
    public static string List(IReadOnlyList<string> parts) => parts.Count switch
    {
        0 => "",
        1 => parts[0],
        _ => $"{string.Join(", ", parts.Take(parts.Count - 1))} and {parts[^1]}",
    };

    /// <summary>The number as it is to be pencilled; "no. 13" where it cannot be.</summary>
    public static string Spelled(this Numbering numbering, int number) => numbering.Spell(number) ?? $"no. {Figure(number)}";

    /// <summary>3/12, 5/12 to 8/12 and 11/12.</summary>
    public static string Numbers(Numbering numbering, IEnumerable<int> ordinals)
    {
        List<(int First, int Last)> stretches = [];

        foreach (var ordinal in ordinals.Distinct().Order())
        {
            if (stretches.Count > 0 && stretches[^1].Last == ordinal - 1L)
            {
                stretches[^1] = (stretches[^1].First, ordinal);
            }
            else
            {
                stretches.Add((ordinal, ordinal));
            }
        }

        return List([.. stretches.SelectMany(stretch => Stretch(numbering, stretch.First, stretch.Last))]);
    }

    private static IEnumerable<string> Stretch(Numbering numbering, int first, int last) =>
        first == last ? [numbering.Spelled(first)]
        : last == first + 1L ? [numbering.Spelled(first), numbering.Spelled(last)]
        : [$"{numbering.Spelled(first)} to {numbering.Spelled(last)}"];
}

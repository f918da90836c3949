using System.Globalization;

namespace EditionRegister.Domain.Reading.Sizes;

/// <summary>How a size was read, for a person.</summary>
internal static class SizeInWords
{
    public static string Of(Measured size)
    {
        var first = $"{(size.IsAbout ? "about " : "")}{Shown(size.First)} {UnitShown(size.First)}";
        var inMillimetres = IsInMillimetres(size.First) ? first : $"{first}: {Millimetres(size.First)} mm";

        return $"{(size.Part is { } part ? $"{PartShown(size, part)}: " : "")}{inMillimetres}{Which(size)}{Beside(size)}{(size.IsIrregular ? ", irregular" : "")}";
    }

    public static string Disagreement(Measured size) =>
        $"{Shown(size.First)} {UnitShown(size.First)} and {Shown(size.Second!)} {UnitShown(size.Second!)} do not say the same: "
        + (size.IsTurned ? "they agree once one of them is turned, so that height stands before width." : $"they lie {Tenths(size.Apart!.Value)} mm apart, and rounding explains {Tenths(size.Tolerance!.Value)} mm.");

    private static string Which(Measured size) => size switch
    {
        { IsDiameter: true } => " across",
        { IsOneLength: true } => ", one length only",
        { Second: not null } when IsAsRead(size) => "",
        _ => $", {string.Join(" by ", Directions(size))}",
    };

    /// <summary>What two systems say needs no word on height and width unless these stand in another order.</summary>
    private static bool IsAsRead(Measured size) => !size.First.IsLabelled && size.Height == Kept(size)[0];

    private static Group Kept(Measured size) => size.Second is { } second && !size.First.IsMetric ? second : size.First;

    // In the order in which they stand, so that 9 × 12 cm, width by height, can be seen to be turned.
    private static IEnumerable<string> Directions(Measured size)
    {
        var kept = Kept(size);

        return Enumerable.Range(0, kept.Count).Select(place => kept[place] switch
        {
            var length when length == size.Height && (length != size.Width || place == 0) => "height",
            var length when length == size.Width && (length != size.Depth || place < 2) => "width",
            _ => "depth",
        });
    }

    private static string Beside(Measured size) => size.Second is not { } other ? ""
        : $"; in {(other.IsMetric ? UnitShown(other) : "inches")} it says {Shown(other)}, which {(size.Agreement == Agreement.Agree ? "agrees" : $"does not agree{KeptShown(size)}")}";

    // What is written first is what is thought to count; where the other counts, that must be seen.
    private static string KeptShown(Measured size) => size.First.IsMetric ? "" : $"; kept is {Millimetres(size.Second!)} mm";

    private static string PartShown(Measured size, string part) => size.Parts.Count > 0 ? string.Join(" and ", size.Parts) : Domain.Text.SafeText.Show(part);

    private static bool IsInMillimetres(Group group) => Enumerable.Range(0, group.Count).All(place => group.UnitOf(place) == LengthUnit.Millimetre);

    // Each with its own unit where they are mixed.
    private static string Shown(Group group) => string.Join(" × ", Enumerable.Range(0, group.Count).Select(place =>
        group.UnitOf(place) == group.Unit ? Figure(group, place) : $"{Figure(group, place)} {Name(group.UnitOf(place))}"));

    private static string Figure(Group group, int place) => group.Measures[place].Figure.In(group.UnitOf(place)).Shown;

    private static string UnitShown(Group group) => Name(group.Unit);

    private static string Name(LengthUnit unit) => unit switch
    {
        LengthUnit.Millimetre => "mm",
        LengthUnit.Centimetre => "cm",
        LengthUnit.Metre => "m",
        LengthUnit.Inch => "in",
        _ => "ft",
    };

    private static string Millimetres(Group group) => string.Join(" × ", Enumerable.Range(0, group.Count).Select(place => Tenths(group[place])));

    private static string Tenths(long micrometres) => Math.Round(micrometres / 1_000m, 1).ToString("0.#", CultureInfo.InvariantCulture);
}

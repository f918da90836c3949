using System.Globalization;

namespace EditionRegister.Domain.Sizes;

/// <summary>Writes sizes for people as a register wants them: a writing, and the unit where it is the measured one.</summary>
/// <param name="Writing">Which rule.</param>
/// <param name="Units">"mm" or "in"; the rules for cataloguing have both systems and do not ask.</param>
public sealed record SizeStyle(SizeWriting Writing, string Units)
{
    public static SizeStyle Millimetres { get; } = new(SizeWriting.Measured, "mm");

    public static SizeStyle Inches { get; } = new(SizeWriting.Measured, "in");

    /// <summary>Every way in which a size may have been written on a document.</summary>
    public static IReadOnlyList<SizeStyle> All { get; } = [Millimetres, Inches, .. SizeWriting.All.Where(writing => writing != SizeWriting.Measured).Select(writing => new SizeStyle(writing, "mm"))];

    /// <summary>Both systems are written, the second in brackets.</summary>
    public bool HasBrackets => Writing != SizeWriting.Measured;

    /// <summary>Height × width with its units: <c>310 × 220 mm</c>, <c>31 × 22 cm (12 1/4 × 8 3/4 inches)</c>.</summary>
    /// <exception cref="ArgumentException">Measured in another unit than mm or in.</exception>
    public string Show(Size size)
    {
        ArgumentNullException.ThrowIfNull(size);

        return HasBrackets ? InBoth(size.Height, size.Width) : size.Show(Units);
    }

    /// <summary>One length with its unit: <c>310 mm</c>, <c>31 cm (12 1/4 inches)</c>.</summary>
    /// <exception cref="ArgumentException">Measured in another unit than mm or in.</exception>
    public string Show(Length length)
    {
        ArgumentNullException.ThrowIfNull(length);

        return HasBrackets ? InBoth(length) : length.Show(Units);
    }

    // The unit of inches is spelled as the examples of each rule have it; that of Graphic Materials from memory.
    private string InBoth(params Length[] lengths) => Writing.Word switch
    {
        "cco" => Joined(lengths, Centimetres, "cm", length => Sizes.Inches.Nearest(length, 4), "inches"),
        "lc" => Joined(lengths, length => Whole(Up(length, 10_000)), "cm", length => Sizes.Inches.Up(length, 4), "in."),
        _ => Joined(lengths, length => Whole(Math.Max(1, (length + 500) / 1_000)), "mm", length => Sizes.Inches.Up(length, 8), "in."),
    };

    private static string Joined(Length[] lengths, Func<long, string> metric, string unit, Func<long, string> inches, string inch) =>
        $"{string.Join(" × ", lengths.Select(length => metric(length.Micrometres)))} {unit} ({string.Join(" × ", lengths.Select(length => inches(length.Micrometres)))} {inch})";

    private static string Centimetres(long micrometres) => (micrometres / 10_000m).ToString("0.####", CultureInfo.InvariantCulture);

    private static long Up(long micrometres, long step) => (micrometres + step - 1) / step;

    private static string Whole(long number) => number.ToString(CultureInfo.InvariantCulture);
}

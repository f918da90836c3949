using System.Diagnostics.CodeAnalysis;
using System.Globalization;
using System.Text.RegularExpressions;

namespace EditionRegister.Domain.Sizes;

/// <summary>A length on a sheet, in whole micrometres; more than nothing and at most 100 metres.</summary>
public sealed partial record Length
{
    /// <summary>Shown next to every field and in every message that asks for a length.</summary>
    public const string Form = "310 or 310.5 (millimetres, with a point)";

    /// <summary>100 metres, in micrometres.</summary>
    public const long Largest = 100_000_000;

    /// <exception cref="ArgumentOutOfRangeException">Not above nothing, or more than <see cref="Largest"/>.</exception>
    public Length(long micrometres)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(micrometres, 1);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(micrometres, Largest);
        Micrometres = micrometres;
    }

    public long Micrometres { get; }

    /// <summary>For machines: millimetres with a point and no trailing zeros (<c>310.5</c>).</summary>
    public string Millimetres => (Micrometres / 1_000m).ToString("0.###", CultureInfo.InvariantCulture);

    /// <summary>Millimetres with a point and at most three decimals. Nothing, less than nothing and a comma are not read.</summary>
    public static bool TryParseMillimetres(string? text, [NotNullWhen(true)] out Length? value)
    {
        var trimmed = (text ?? "").Trim(' ');
        value = null;

        if (Pattern().IsMatch(trimmed)
            && decimal.Parse(trimmed, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture) * 1_000m is >= 1 and <= Largest and var micrometres)
        {
            value = new Length((long)micrometres);
        }

        return value is not null;
    }

    /// <summary>For people, with its unit: <c>310.5 mm</c>, or inches to the nearest sixteenth (<c>12 1/4 in</c>).</summary>
    /// <param name="unit">"mm" or "in".</param>
    /// <exception cref="ArgumentException">Another unit.</exception>
    public string Show(string unit) => $"{Figures(unit)} {unit}";

    public override string ToString() => Show("mm");

    internal string Figures(string unit) => unit switch
    {
        "mm" => Millimetres,
        "in" => Inches.Nearest(Micrometres),
        _ => throw new ArgumentException("Lengths are shown in mm or in.", nameof(unit)),
    };

    [GeneratedRegex(@"^[0-9]{1,6}(?:\.[0-9]{1,3})?\z", RegexOptions.CultureInvariant)]
    private static partial Regex Pattern();
}

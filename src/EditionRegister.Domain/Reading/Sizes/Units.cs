using EditionRegister.Domain.Reading.Text;

namespace EditionRegister.Domain.Reading.Sizes;

/// <summary>Units of length as words, abbreviations and primes, in five languages.</summary>
internal static class Units
{
    public static bool IsMetric(LengthUnit unit) => unit is LengthUnit.Millimetre or LengthUnit.Centimetre or LengthUnit.Metre;

    public static long MicrometresIn(LengthUnit unit) => unit switch
    {
        LengthUnit.Millimetre => 1_000,
        LengthUnit.Centimetre => 10_000,
        LengthUnit.Metre => 1_000_000,
        LengthUnit.Inch => 25_400,
        LengthUnit.Foot => 304_800,
        _ => 0,
    };

    /// <summary>A unit with the point of its abbreviation; a hyphen may join it to the figure: 12-inch, 12 in., 12".</summary>
    public static LengthUnit At(TokenText text, int at, out int next)
    {
        var word = text.IsSign(at, '-') && !text.IsApart(at) && !text.IsApart(at + 1) ? at + 1 : at;
        var unit = OfWord(text.Word(word));
        next = text.IsSign(word + 1, '.') && !text.IsApart(word + 1) ? word + 2 : word + 1;

        return unit != LengthUnit.None ? unit : Primes(text, at, out next);
    }

    public static LengthUnit OfWord(ReadOnlySpan<char> word) => word switch
    {
        "mm" or "mms" or "millimetre" or "millimetres" or "millimeter" or "millimeters" or "millimetri" or "milimetros" => LengthUnit.Millimetre,
        "cm" or "cms" or "centimetre" or "centimetres" or "centimeter" or "centimeters" or "zentimeter" or "centimetri" or "centimetros" => LengthUnit.Centimetre,
        "m" or "metre" or "metres" or "meter" or "meters" or "metri" or "metros" => LengthUnit.Metre,
        "in" or "ins" or "inch" or "inches" or "zoll" or "pouce" or "pouces" or "pollice" or "pollici" or "pulgada" or "pulgadas" => LengthUnit.Inch,
        "ft" or "feet" or "foot" => LengthUnit.Foot,
        _ => LengthUnit.None,
    };

    private static LengthUnit Primes(TokenText text, int at, out int next)
    {
        var isPrime = IsPrime(text, at);
        var isDouble = text.IsSign(at, '"') || (isPrime && IsPrime(text, at + 1) && !text.IsApart(at + 1));
        next = isPrime && isDouble ? at + 2 : isPrime || isDouble ? at + 1 : at;

        return isDouble ? LengthUnit.Inch : isPrime ? LengthUnit.Foot : LengthUnit.None;
    }

    private static bool IsPrime(TokenText text, int at) => text.IsAnySign(at, "'\u2032");
}

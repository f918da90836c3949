using System.Globalization;
using EditionRegister.Domain.Reading.Text;

namespace EditionRegister.Domain.Reading.Sizes;

internal enum LengthUnit : byte
{
    None,
    Millimetre,
    Centimetre,
    Metre,
    Inch,
    Foot,
}

/// <summary>A length as it stands in a text: its figure in millionths, its unit if it has one of its own, and the token after it.</summary>
/// <param name="Figure">In millionths of the unit, so that thirds and decimals are kept without rounding errors that matter.</param>
/// <param name="Unit">Its own unit, or none.</param>
/// <param name="Step">The smallest step it is written in, in millionths of the unit: a tenth, a sixteenth.</param>
/// <param name="Next">The token after it.</param>
internal readonly record struct LengthRead(long Figure, LengthUnit Unit, long Step, int Next)
{
    private const long Millionth = 1_000_000;

    public long Micrometres(LengthUnit unit) => (Figure * MicrometresIn(unit) / Millionth);

    public long StepMicrometres(LengthUnit unit) => Step * MicrometresIn(unit) / Millionth;

    private static long MicrometresIn(LengthUnit unit) => unit switch
    {
        LengthUnit.Millimetre => 1_000,
        LengthUnit.Centimetre => 10_000,
        LengthUnit.Metre => 1_000_000,
        LengthUnit.Inch => 25_400,
        LengthUnit.Foot => 304_800,
        _ => 0,
    };
}

/// <summary>Reads figures with common fractions (7 3/8, 7⅜, 1/2), decimals with a point or a comma, and units.</summary>
internal static class Lengths
{
    private const long One = 1_000_000;

    public static LengthRead? At(TokenText text, int at)
    {
        var (figure, step, next) = Number(text, at);

        if (next == at || figure > 1_000_000 * One)
        {
            return null;
        }

        var unit = UnitAt(text, next, out var after);

        // 5' 3": feet and inches.
        var (inches, inchStep, behind) = unit == LengthUnit.Foot ? Number(text, after) : (0, 0, after);

        if (behind > after && UnitAt(text, behind, out var end) == LengthUnit.Inch)
        {
            return new LengthRead((figure * 12) + inches, LengthUnit.Inch, inchStep, end);
        }

        return new LengthRead(figure, unit, step, after);
    }

    public static LengthUnit UnitAt(TokenText text, int at, out int next)
    {
        next = text.IsSign(at + 1, '.') && !text.IsApart(at + 1) ? at + 2 : at + 1;
        var unit = text.Word(at) switch
        {
            "mm" or "millimetres" or "millimeters" => LengthUnit.Millimetre,
            "cm" or "cms" or "centimetres" or "centimeters" => LengthUnit.Centimetre,
            "m" or "metres" or "meters" => LengthUnit.Metre,
            "in" or "ins" or "inch" or "inches" => LengthUnit.Inch,
            "ft" or "feet" or "foot" => LengthUnit.Foot,
            _ => LengthUnit.None,
        };

        if (unit != LengthUnit.None)
        {
            return unit;
        }

        next = at + 1;

        // Two single primes are a double one.
        if (text.IsSign(at, '\'') && text.IsSign(at + 1, '\''))
        {
            next = at + 2;

            return LengthUnit.Inch;
        }

        if (text.IsSign(at, '"'))
        {
            return LengthUnit.Inch;
        }

        if (text.IsSign(at, '\'') || text.IsSign(at, '\u2032'))
        {
            return LengthUnit.Foot;
        }

        next = at;

        return LengthUnit.None;
    }

    private static (long Figure, long Step, int Next) Number(TokenText text, int at)
    {
        if (Vulgar(text, at) is { } alone)
        {
            return (alone, One / 16, at + 1);
        }

        if (text.Figure(at) is not { } whole)
        {
            return (0, 0, at);
        }

        if (text.IsSign(at + 1, '/') && text.Figure(at + 2) is { } below and > 0 and <= 64 && whole < below)
        {
            return (whole * One / below, One / below, at + 3);
        }

        if (text.IsAnySign(at + 1, ".,") && !text.IsApart(at + 1) && !text.IsApart(at + 2) && text.IsDigits(at + 2) && text[at + 2].Length <= 3)
        {
            var (tenths, step) = (0L, One);

            foreach (var digit in text.Written(at + 2))
            {
                step /= 10;
                tenths += (digit - '0') * step;
            }

            return ((whole * One) + tenths, step, at + 3);
        }

        if (text.Figure(at + 1) is { } above && text.IsSign(at + 2, '/') && text.Figure(at + 3) is { } parts and > 0 and <= 64 && above < parts)
        {
            return ((whole * One) + (above * One / parts), One / parts, at + 4);
        }

        return text.IsSign(at + 1, '-') && text.Figure(at + 2) is { } over && text.IsSign(at + 3, '/') && text.Figure(at + 4) is { } of and > 0 and <= 64 && over < of ? ((whole * One) + (over * One / of), One / of, at + 5)
            : Vulgar(text, at + 1) is { } part ? ((whole * One) + part, One / 16, at + 2)
            : (whole * One, One, at + 1);
    }

    /// <summary>½ and its like, by what the Unicode standard says they are worth.</summary>
    private static long? Vulgar(TokenText text, int at) =>
        text.Written(at) is [var sign] && !char.IsAsciiDigit(sign) && CharUnicodeInfo.GetNumericValue(sign) is > 0 and < 1 and var value ? (long)Math.Round(value * One) : null;
}

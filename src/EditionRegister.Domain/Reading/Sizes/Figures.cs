using System.Globalization;
using EditionRegister.Domain.Reading.Text;

namespace EditionRegister.Domain.Reading.Sizes;

/// <summary>Reads figures: whole, with decimals after a point or a comma, and with the common fractions of a ruler (7 3/8, 7-3/8, 7⅜, 7³⁄₈).</summary>
internal static class Figures
{
    private const int MostDecimals = 6;

    // As the Unicode standard has them, from U+00BC and from U+2150.
    private const string Vulgars = "¼½¾⅓⅔⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞";

    private static readonly (byte Above, byte Below)[] VulgarParts =
        [(1, 4), (1, 2), (3, 4), (1, 3), (2, 3), (1, 5), (2, 5), (3, 5), (4, 5), (1, 6), (5, 6), (1, 8), (3, 8), (5, 8), (7, 8)];

    /// <summary>Null where no figure begins; one that is wrong has its fault, and the token after all that belongs to it.</summary>
    public static Figure? At(TokenText text, int at)
    {
        if (Fraction(text, at) is { } alone)
        {
            return alone;
        }

        // .5 cm
        if (text.IsSign(at, '.') && text.IsApart(at) && !text.IsApart(at + 1) && text.IsDigits(at + 1))
        {
            return WithDecimals(text, 0, at + 1);
        }

        if (!text.IsDigits(at))
        {
            return null;
        }

        return text.Figure(at) is not { } whole ? new Figure(0, 1, at + 1) { Fault = SizeFault.TooLarge }
            : IsTight(text, at + 1, ".,") && text.IsDigits(at + 2) ? Pointed(text, at, whole)
            : Mixed(text, at, whole);
    }

    /// <summary>A whole figure with a fraction behind it, or alone.</summary>
    private static Figure Mixed(TokenText text, int at, int whole)
    {
        var joined = text.IsAnySign(at + 1, "-+") ? at + 2 : at + 1;

        if ((Fraction(text, joined) ?? (joined > at + 1 ? Fraction(text, at + 1) : null)) is { } part)
        {
            return part with { Above = part.Above + (whole * part.Below) };
        }

        // 1 220 mm, with a space between thousands; a word before it would own the first figure.
        return text.IsDigits(at + 1) && text[at + 1].Length == 3 && text[at].Length <= 3 && whole > 0 && IsAlone(text, at - 1)
            ? new Figure((whole * 1_000L) + text.Figure(at + 1)!.Value, 1, at + 2) { IsGrouped = true, IsSpaced = true }
            : new Figure(whole, 1, at + 1);
    }

    private static bool IsAlone(TokenText text, int before) => before < 0 || !(text.IsWord(before) || text.IsDigits(before)) || Lengths.IsTimes(text, before);

    private static Figure Pointed(TokenText text, int at, int whole)
    {
        // A comma before exactly three figures parts thousands, or decimals: 1,220. Nothing parts 0,125.
        if (text.IsSign(at + 1, ',') && text[at + 2].Length == 3 && text[at].Length <= 3 && whole > 0)
        {
            return new Figure((whole * 1_000L) + text.Figure(at + 2)!.Value, 1, at + 3) { IsGrouped = true };
        }

        return WithDecimals(text, whole, at + 2);
    }

    private static Figure WithDecimals(TokenText text, int whole, int at)
    {
        // 12.5.3 is no figure.
        var next = at + 1;

        while (IsTight(text, next, ".,") && text.IsDigits(next + 1))
        {
            next += 2;
        }

        if (next > at + 1 || text[at].Length > MostDecimals)
        {
            return new Figure(0, 1, next) { Fault = next > at + 1 ? SizeFault.TwoReadings : SizeFault.TooLarge };
        }

        var below = 1L;

        for (var i = 0; i < text[at].Length; i++)
        {
            below *= 10;
        }

        return new Figure((whole * below) + text.Figure(at)!.Value, below, next);
    }

    /// <summary>7/8, ⅞ or ⁷⁄₈; with a fault where no ruler has it.</summary>
    private static Figure? Fraction(TokenText text, int at)
    {
        if (text.Written(at) is [var sign] && Vulgars.IndexOf(sign, StringComparison.Ordinal) is >= 0 and var place)
        {
            return new Figure(VulgarParts[place].Above, VulgarParts[place].Below, at + 1) { IsFraction = true };
        }

        var slash = text.IsDigits(at) ? at + 1 : Raised(text, at, out _);

        if (!text.IsSign(slash, '/'))
        {
            return null;
        }

        var after = text.IsDigits(slash + 1) ? slash + 2 : Raised(text, slash + 1, out _);

        return after == slash + 1 ? null : OnARuler(text, at, slash, after);
    }

    private static Figure OnARuler(TokenText text, int at, int slash, int after)
    {
        var (above, below) = (Value(text, at), Value(text, slash + 1));
        var next = after;

        // 39/ 7/16
        while (text.IsSign(next, '/') && text.IsDigits(next + 1))
        {
            next += 2;
        }

        return next == after && above > 0 && above < below && below is 2 or 3 or 4 or 5 or 6 or 8 or 10 or 12 or 16 or 20 or 32 or 64
            ? new Figure(above, below, next) { IsFraction = true }
            : new Figure(0, 1, next) { Fault = SizeFault.NoFraction };
    }

    private static int Value(TokenText text, int at)
    {
        if (text.IsDigits(at))
        {
            return text.Figure(at) ?? int.MaxValue;
        }

        Raised(text, at, out var value);

        return value;
    }

    /// <summary>Raised or lowered figures, each a sign of its own: ³, ₁₆.</summary>
    private static int Raised(TokenText text, int at, out int value)
    {
        value = 0;
        var next = at;

        while (next < at + 2 && text.Written(next) is [var sign] && !char.IsAsciiDigit(sign) && CharUnicodeInfo.GetDigitValue(sign) is >= 0 and var digit)
        {
            value = (value * 10) + digit;
            next++;
        }

        return next;
    }

    private static bool IsTight(TokenText text, int at, string signs) => text.IsAnySign(at, signs) && !text.IsApart(at) && !text.IsApart(at + 1);
}

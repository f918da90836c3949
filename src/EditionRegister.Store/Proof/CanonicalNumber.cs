using System.Buffers;
using System.Globalization;
using System.Text;

namespace EditionRegister.Store.Proof;

/// <summary>Writes a number as ECMAScript does (ECMA-262, Number::toString), which RFC 8785 makes the one form.</summary>
internal static class CanonicalNumber
{
    /// <exception cref="FormatException">The number is not finite: JSON has no form for it.</exception>
    public static void Write(double value, IBufferWriter<byte> output)
    {
        if (!double.IsFinite(value))
        {
            throw new FormatException("A number is too large for JSON as RFC 8785 understands it (an IEEE 754 double).");
        }

        output.Write(Encoding.ASCII.GetBytes(Text(value)));
    }

    private static string Text(double value)
    {
        if (value == 0)
        {
            return "0";                                            // also for negative zero
        }

        var sign = value < 0 ? "-" : "";
        var (digits, point) = Shortest(Math.Abs(value));

        return sign + Lay(digits, point);
    }

    /// <summary>The shortest digits that read back as the same number, and how many of them stand before the point.</summary>
    private static (string Digits, int Point) Shortest(double value)
    {
        // "R" promises the shortest digits that read back; its layout is .NET's own and is taken apart here.
        var text = value.ToString("R", CultureInfo.InvariantCulture);
        var e = text.IndexOf('E', StringComparison.Ordinal);
        var exponent = e < 0 ? 0 : int.Parse(text.AsSpan(e + 1), NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture);
        var mantissa = e < 0 ? text : text[..e];
        var dot = mantissa.IndexOf('.', StringComparison.Ordinal);
        var whole = dot < 0 ? mantissa : mantissa[..dot];
        var digits = whole + (dot < 0 ? "" : mantissa[(dot + 1)..]);
        var significant = digits.TrimStart('0');

        return (significant.TrimEnd('0'), whole.Length + exponent - (digits.Length - significant.Length));
    }

    private static string Lay(string digits, int point) => point switch
    {
        > 0 and <= 21 when digits.Length <= point => digits.PadRight(point, '0'),
        > 0 and <= 21 => $"{digits[..point]}.{digits[point..]}",
        > -6 and <= 0 => $"0.{new string('0', -point)}{digits}",
        _ => $"{digits[..1]}{(digits.Length > 1 ? "." : "")}{digits[1..]}e{(point > 0 ? "+" : "-")}{Whole(Math.Abs(point - 1))}",
    };

    private static string Whole(int value) => value.ToString(CultureInfo.InvariantCulture);
}

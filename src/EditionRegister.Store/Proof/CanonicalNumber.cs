using System.Buffers;
using System.Buffers.Text;
using System.Diagnostics;
using System.Globalization;
using System.Text;

namespace EditionRegister.Store.Proof;

/// <summary>Writes a number as ECMAScript does (ECMA-262, Number::toString), which RFC 8785 makes the one form.</summary>
internal static class CanonicalNumber
{
    // No double has more significant digits than 767, so "E766" is exact.
    private const int AllDigits = 767;

    // 17 significant digits tell any two doubles apart.
    private const int Enough = 17;

    /// <exception cref="FormatException">The number is not finite: JSON has no form for it.</exception>
    public static void Write(double value, IBufferWriter<byte> output)
    {
        if (!double.IsFinite(value))
        {
            throw new FormatException("A number is too large for JSON as RFC 8785 understands it (an IEEE 754 double).");
        }

        if (double.IsInteger(value) && Math.Abs(value) <= CanonicalWriter.LargestInteger)
        {
            Utf8Formatter.TryFormat((long)value, output.GetSpan(20), out var written);    // negative zero becomes 0 here, as it must
            output.Advance(written);
            return;
        }

        var (digits, point) = Shortest(Math.Abs(value));
        output.Write(Encoding.ASCII.GetBytes((value < 0 ? "-" : "") + Lay(digits, point)));
    }

    /// <summary>The fewest digits that read back as the same number, the nearest of them, and how many stand before the point.</summary>
    private static (string Digits, int Point) Shortest(double value)
    {
        // Not "R": .NET 10 writes 2^-25 with a digit too few, which reads back as its neighbour.
        var exact = value.ToString($"E{AllDigits - 1}", CultureInfo.InvariantCulture);
        var digits = exact[..1] + exact[2..(AllDigits + 1)];
        var point = 1 + int.Parse(exact.AsSpan(AllDigits + 2), NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture);

        for (var length = 1; length <= Enough; length++)
        {
            if (Nearest(value, digits, point, length) is { } found)
            {
                return (found.TrimEnd('0'), point + found.Length - length);
            }
        }

        throw new UnreachableException("17 digits always tell two doubles apart.");
    }

    private static string? Nearest(double value, string digits, int point, int length)
    {
        var below = long.Parse(digits.AsSpan(0, length), NumberStyles.None, CultureInfo.InvariantCulture);
        var rest = string.CompareOrdinal(digits[length..], "5".PadRight(AllDigits - length, '0'));
        var belowIsNearer = rest < 0 || (rest == 0 && long.IsEvenInteger(below));
        long[] nearestFirst = belowIsNearer ? [below, below + 1] : [below + 1, below];

        // Just above a power of two the gap is twice as wide as below it, so the second nearest may be the one that reads back.
        return nearestFirst
            .Select(Whole)
            .FirstOrDefault(candidate => double.Parse($"{candidate}E{Whole(point - length)}", CultureInfo.InvariantCulture).Equals(value));
    }

    private static string Lay(string digits, int point) => point switch
    {
        > 0 and <= 21 when digits.Length <= point => digits.PadRight(point, '0'),
        > 0 and <= 21 => $"{digits[..point]}.{digits[point..]}",
        > -6 and <= 0 => $"0.{new string('0', -point)}{digits}",
        _ => $"{digits[..1]}{(digits.Length > 1 ? "." : "")}{digits[1..]}e{(point > 0 ? "+" : "-")}{Whole(Math.Abs(point - 1))}",
    };

    private static string Whole(long value) => value.ToString(CultureInfo.InvariantCulture);
}

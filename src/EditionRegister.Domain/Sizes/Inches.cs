using System.Globalization;

namespace EditionRegister.Domain.Sizes;

/// <summary>Inches as cataloguers write them: whole, and a common fraction in halves, quarters, eighths or sixteenths.</summary>
internal static class Inches
{
    private const long MicrometresInAnInch = 25_400;

    /// <param name="micrometres">The length.</param>
    /// <param name="parts">Into how many parts an inch is divided: a power of two.</param>
    public static string Nearest(long micrometres, long parts = 16) => Shown(((2 * micrometres * parts) + MicrometresInAnInch) / (2 * MicrometresInAnInch), parts);

    /// <summary>Up to the next part; what is exact stays.</summary>
    /// <param name="micrometres">The length.</param>
    /// <param name="parts">Into how many parts an inch is divided: a power of two.</param>
    public static string Up(long micrometres, long parts) => Shown(((micrometres * parts) + MicrometresInAnInch - 1) / MicrometresInAnInch, parts);

    private static string Shown(long count, long parts)
    {
        // A sliver is not nothing: the least that is shown is one part.
        var (whole, rest) = Math.DivRem(Math.Max(1, count), parts);

        return rest == 0 ? Figure(whole) : whole == 0 ? Fraction(rest, parts) : $"{Figure(whole)} {Fraction(rest, parts)}";
    }

    private static string Fraction(long above, long below) =>
        above % 2 == 0 ? Fraction(above / 2, below / 2) : $"{Figure(above)}/{Figure(below)}";

    private static string Figure(long number) => number.ToString(CultureInfo.InvariantCulture);
}

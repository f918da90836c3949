using System.Globalization;

namespace EditionRegister.Domain.Sizes;

/// <summary>Inches as cataloguers write them: whole, and a common fraction to the nearest sixteenth.</summary>
internal static class Inches
{
    private const long MicrometresInAnInch = 25_400;
    private const long Parts = 16;

    public static string Nearest(long micrometres)
    {
        // A sliver is not nothing: the least that is shown is one sixteenth.
        var sixteenths = Math.Max(1, ((2 * micrometres * Parts) + MicrometresInAnInch) / (2 * MicrometresInAnInch));
        var (whole, rest) = (sixteenths / Parts, sixteenths % Parts);

        return rest == 0 ? Figure(whole) : whole == 0 ? Fraction(rest, Parts) : $"{Figure(whole)} {Fraction(rest, Parts)}";
    }

    private static string Fraction(long above, long below) =>
        above % 2 == 0 ? Fraction(above / 2, below / 2) : $"{Figure(above)}/{Figure(below)}";

    private static string Figure(long number) => number.ToString(CultureInfo.InvariantCulture);
}

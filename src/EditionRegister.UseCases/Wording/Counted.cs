using System.Globalization;

namespace EditionRegister.UseCases.Wording;

/// <summary>Numbers as sentences have them, the same in every culture.</summary>
public static class Counted
{
    public static string Figure(long number) => number.ToString(CultureInfo.InvariantCulture);

    /// <summary>1 sheet, 14 sheets.</summary>
    public static string Of(long number, string one, string? many = null) => $"{Figure(number)} {(number == 1 ? one : many ?? one + "s")}";

    public static string Sheets(long number) => Of(number, "sheet");

    /// <summary>33.33 %, from hundredths of a per cent.</summary>
    public static string Share(int hundredths) => $"{(hundredths / 100m).ToString("0.##", CultureInfo.InvariantCulture)} %";
}

using System.Text.RegularExpressions;

namespace EditionRegister.Domain.Prices;

/// <summary>What the register knows of ISO 4217: how a code looks, and which currencies do not have two decimals.</summary>
internal static class Currencies
{
    // From memory of ISO 4217 list one; the tests compare what .NET's own culture data can confirm.
    private static readonly HashSet<string> WithoutDecimals =
    [
        "BIF", "CLP", "DJF", "GNF", "ISK", "JPY", "KMF", "KRW", "PYG", "RWF", "UGX", "VND", "VUV", "XAF", "XOF", "XPF",
    ];

    private static readonly HashSet<string> WithThreeDecimals = ["BHD", "IQD", "JOD", "KWD", "LYD", "OMR", "TND"];

    public static int MinorDigits(string currency) =>
        WithoutDecimals.Contains(currency) ? 0 : WithThreeDecimals.Contains(currency) ? 3 : 2;

    public static decimal MinorUnitsPerUnit(string currency) => MinorDigits(currency) switch { 0 => 1m, 3 => 1_000m, _ => 100m };

    public static bool IsCode(string? currency) => currency is { Length: 3 } && currency.All(char.IsAsciiLetterUpper);

    /// <summary>ASCII letters only: no other letter may become one of a currency's, in any culture.</summary>
    public static string InCapitals(string currency) =>
        string.Concat(currency.Select(c => char.IsAsciiLetterLower(c) ? (char)(c - 32) : c));

    public static bool HasForm(string amount, int minorDigits) =>
        Regex.IsMatch(
            amount,
            minorDigits == 0 ? @"^-?[0-9]{1,16}\z" : $@"^-?[0-9]{{1,16}}(?:\.[0-9]{{1,{(minorDigits == 3 ? "3" : "2")}}})?\z",
            RegexOptions.CultureInvariant);
}

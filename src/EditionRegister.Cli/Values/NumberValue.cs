using System.Globalization;

namespace EditionRegister.Cli;

/// <summary>Whole numbers in plain digits, the same in every culture.</summary>
internal static class NumberValue
{
    /// <summary>One or more: what things are known by.</summary>
    public static bool TryReadId(string text, out long? value) => (value = Read(text) is > 0 and var id ? id : null) is not null;

    /// <summary>Nothing or more.</summary>
    public static bool TryReadCount(string text, out int? value) =>
        (value = Read(text) is <= int.MaxValue and var count ? (int?)count : null) is not null;

    /// <summary>One or more.</summary>
    public static bool TryReadSome(string text, out int? value) => TryReadCount(text, out value) && (value = value > 0 ? value : null) is not null;

    private static long? Read(string text) =>
        text.All(char.IsAsciiDigit) && long.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var number) ? number : null;
}

using System.Globalization;

namespace EditionRegister.Domain.Numbers;

internal static class ArabicNumeral
{
    public static string Write(int number) => number.ToString(CultureInfo.InvariantCulture);

    public static bool IsDigits(string text) => text.Length > 0 && text.All(char.IsAsciiDigit);

    /// <summary>Zero and numbers too large for an int are null: no sheet carries them.</summary>
    public static int? Read(string text) =>
        IsDigits(text) && int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var number) && number > 0 ? number : null;
}

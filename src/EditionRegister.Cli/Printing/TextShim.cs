using System.Globalization;
using System.Text;

// Stands in for the types of the same names in EditionRegister.Domain; delete this file when they arrive.
namespace EditionRegister.Domain.Text;

internal static class TextWidth
{
    public static int Of(string text) => new StringInfo(text).LengthInTextElements;

    public static string Pad(string text, int width) => text + new string(' ', Math.Max(0, width - Of(text)));
}

internal static class SafeText
{
    public static string Show(string text) =>
        string.Concat(text.EnumerateRunes().Select(rune => Rune.IsControl(rune) ? $"\\u{rune.Value:x4}" : rune.ToString()));
}

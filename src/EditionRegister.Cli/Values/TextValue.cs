using System.Text;

namespace EditionRegister.Cli;

/// <summary>A text someone typed: something to read, and whole characters only.</summary>
internal static class TextValue
{
    public const string Form = "a text";

    /// <summary>An empty text is what a script with an unset variable gives; half a character cannot be written down.</summary>
    public static bool TryRead(string text, out string value)
    {
        value = text;

        return !string.IsNullOrWhiteSpace(text) && !text.Contains('\0', StringComparison.Ordinal) && IsWhole(text);
    }

    private static bool IsWhole(string text)
    {
        for (var at = 0; at < text.Length;)
        {
            if (!Rune.TryGetRuneAt(text, at, out var rune))
            {
                return false;
            }

            at += rune.Utf16SequenceLength;
        }

        return true;
    }
}

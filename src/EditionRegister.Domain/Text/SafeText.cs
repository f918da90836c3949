using System.Globalization;
using System.Text;

namespace EditionRegister.Domain.Text;

/// <summary>Text of others as it may be shown on a terminal: what would command, hide or reorder is made visible and harmless.</summary>
public static class SafeText
{
    /// <summary>Control characters become their pictures (␛, ␊), other dangerous ones their code (<c>\u{202E}</c>); all else stays.</summary>
    public static string Show(string text)
    {
        ArgumentNullException.ThrowIfNull(text);

        StringBuilder shown = new(text.Length);

        for (var at = 0; at < text.Length;)
        {
            if (Rune.TryGetRuneAt(text, at, out var rune))
            {
                shown.Append(Shown(rune));
                at += rune.Utf16SequenceLength;
            }
            else
            {
                shown.Append(Code(text[at]));
                at++;
            }
        }

        return shown.ToString();
    }

    private static string Shown(Rune rune) => rune.Value switch
    {
        < 0x20 => ((char)(0x2400 + rune.Value)).ToString(),
        0x7F => "\u2421",
        // Joiners shape Persian and Indic names and emoji; they neither hide nor reorder.
        0x200C or 0x200D => rune.ToString(),
        _ => IsDangerous(rune) ? Code(rune.Value) : rune.ToString(),
    };

    // Format characters hold the bidirectional overrides, the zero-width space and the invisible tags.
    private static bool IsDangerous(Rune rune) => Rune.GetUnicodeCategory(rune)
        is UnicodeCategory.Control or UnicodeCategory.Format or UnicodeCategory.LineSeparator or UnicodeCategory.ParagraphSeparator;

    private static string Code(int value) => $@"\u{{{value.ToString("X", CultureInfo.InvariantCulture)}}}";
}

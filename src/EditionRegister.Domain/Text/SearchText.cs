using System.Globalization;
using System.Text;

namespace EditionRegister.Domain.Text;

/// <summary>Text as it is searched for: case, accents and white space make no difference, in any culture.</summary>
public static class SearchText
{
    // What decomposing leaves whole although people type it with plain letters.
    private static readonly Dictionary<char, string> Plain = new()
    {
        ['ß'] = "SS", ['ẞ'] = "SS", ['Ø'] = "O", ['Ł'] = "L", ['Æ'] = "AE", ['Œ'] = "OE", ['Đ'] = "D", ['ı'] = "I", ['Ð'] = "D", ['Þ'] = "TH",
    };

    /// <summary>One form for all spellings of a text; folding it again changes nothing.</summary>
    public static string Fold(string text)
    {
        ArgumentNullException.ThrowIfNull(text);

        StringBuilder folded = new(text.Length);

        foreach (var c in Decomposed(text))
        {
            if (!IsAccent(c))
            {
                Add(folded, char.ToUpperInvariant(c));
            }
        }

        return Composed(folded.ToString().TrimEnd(' '));
    }

    private static void Add(StringBuilder folded, char c)
    {
        if (!char.IsWhiteSpace(c))
        {
            folded.Append(Plain.TryGetValue(c, out var plain) ? plain : c.ToString());
        }
        else if (folded.Length > 0 && folded[^1] != ' ')
        {
            folded.Append(' ');
        }
    }

    // Lone surrogates cannot be normalised; a damaged text is still searched.
    private static string Decomposed(string text)
    {
        StringBuilder whole = new(text.Length);

        foreach (var rune in text.EnumerateRunes())
        {
            whole.Append(rune.ToString());
        }

        return whole.ToString().Normalize(NormalizationForm.FormKD);
    }

    // Put together again what is no accent, so that か is not found inside が.
    private static string Composed(string text) => text.Normalize(NormalizationForm.FormKC);

    // The accents of all scripts, and the points of Hebrew and Arabic; not the vowels of Thai or the voicing of Japanese.
    private static bool IsAccent(char c) =>
        c is (>= '\u0300' and <= '\u036F') or (>= '\u1AB0' and <= '\u1AFF') or (>= '\u1DC0' and <= '\u1DFF') or (>= '\u20D0' and <= '\u20FF')
            or (>= '\u0591' and <= '\u05C7') or (>= '\u064B' and <= '\u065F') or (>= '\uFE20' and <= '\uFE2F')
        && CharUnicodeInfo.GetUnicodeCategory(c) is UnicodeCategory.NonSpacingMark or UnicodeCategory.EnclosingMark;
}

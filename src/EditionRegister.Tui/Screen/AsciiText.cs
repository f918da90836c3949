using System.Globalization;
using System.Text;

namespace EditionRegister.Tui.Screen;

/// <summary>Text for a terminal that shows nothing but ASCII: lines and quotation marks by their like, letters without their accents, all else by ?.</summary>
internal static class AsciiText
{
    /// <summary>As many columns as before, where the original letters take one each.</summary>
    public static string Of(string text)
    {
        ArgumentNullException.ThrowIfNull(text);

        if (Ascii.IsValid(text))
        {
            return text;
        }

        StringBuilder plain = new(text.Length);

        foreach (var rune in text.Normalize(NormalizationForm.FormC).EnumerateRunes())
        {
            plain.Append(Plain(rune));
        }

        return plain.ToString();
    }

    private static string Plain(Rune rune) => rune.Value switch
    {
        < 0x80 => rune.ToString(),
        '“' or '”' or '„' or '«' or '»' => "\"",
        '‘' or '’' => "'",
        '›' => ">",
        '‹' => "<",
        '·' => "-",
        '•' => "*",
        '…' => "~",
        '×' => "x",
        '–' or '—' or '─' => "-",
        '│' => "|",
        '┌' or '┐' or '└' or '┘' => "+",
        _ => Letter(rune),
    };

    private static string Letter(Rune rune)
    {
        if (Rune.GetUnicodeCategory(rune) is UnicodeCategory.NonSpacingMark or UnicodeCategory.EnclosingMark)
        {
            return "";
        }

        var bare = rune.ToString().Normalize(NormalizationForm.FormD)[0];
        var columns = Domain.Text.TextWidth.Of(rune.ToString());

        return bare < 0x80 ? bare.ToString() : new string('?', Math.Max(1, columns));
    }
}

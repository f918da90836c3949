using System.Globalization;
using System.Text;

namespace EditionRegister.Domain.Text;

/// <summary>How many columns a text takes on a terminal: combining characters none, East Asian wide ones two, all others one.</summary>
public static class TextWidth
{
    private const string Ellipsis = "…";

    /// <summary>Columns. A text with control characters has none to speak of: show it safely first.</summary>
    public static int Of(string text)
    {
        ArgumentNullException.ThrowIfNull(text);

        return text.EnumerateRunes().Sum(Of);
    }

    /// <summary>Spaces behind the text up to the columns asked for; a text that is wider already stays as it is.</summary>
    public static string Pad(string text, int columns)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(columns);

        return text + new string(' ', Math.Max(0, columns - Of(text)));
    }

    /// <summary>The text itself if it fits, else as much of it as fits with … behind it; letters keep their accents.</summary>
    public static string Cut(string text, int columns)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(columns);

        return Of(text) <= columns ? text
            : columns == 0 ? ""
            : Beginning(text, columns - Of(Ellipsis)) + Ellipsis;
    }

    private static string Beginning(string text, int columns)
    {
        StringBuilder beginning = new();

        for (var elements = StringInfo.GetTextElementEnumerator(text); elements.MoveNext();)
        {
            columns -= Of(elements.GetTextElement());

            if (columns < 0)
            {
                break;
            }

            beginning.Append(elements.GetTextElement());
        }

        return beginning.ToString();
    }

    private static int Of(Rune rune) => Rune.GetUnicodeCategory(rune) switch
    {
        UnicodeCategory.NonSpacingMark or UnicodeCategory.EnclosingMark or UnicodeCategory.Format or UnicodeCategory.Control => 0,
        UnicodeCategory.LineSeparator or UnicodeCategory.ParagraphSeparator => 0,
        // The vowels and finals of Korean join the consonant before them.
        _ when rune.Value is (>= 0x1160 and <= 0x11FF) or (>= 0xD7B0 and <= 0xD7FF) => 0,
        _ => EastAsianWidth.IsWide(rune.Value) ? 2 : 1,
    };
}

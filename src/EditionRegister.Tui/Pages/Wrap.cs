using EditionRegister.Domain.Text;

namespace EditionRegister.Tui.Pages;

/// <summary>Breaks a sentence into lines at its blanks; a word longer than a line is broken where the line ends.</summary>
internal static class Wrap
{
    /// <param name="text">A sentence; line ends in it end a line.</param>
    /// <param name="columns">Terminal columns, at least one.</param>
    public static IReadOnlyList<string> Of(string text, int columns)
    {
        ArgumentNullException.ThrowIfNull(text);
        ArgumentOutOfRangeException.ThrowIfLessThan(columns, 1);

        return [.. text.Split('\n').SelectMany(paragraph => Paragraph(paragraph, columns))];
    }

    private static IEnumerable<string> Paragraph(string text, int columns)
    {
        var line = "";

        foreach (var word in text.Split(' ').SelectMany(word => Pieces(word, columns)))
        {
            var longer = line.Length == 0 ? word : $"{line} {word}";

            if (TextWidth.Of(SafeText.Show(longer)) <= columns)
            {
                line = longer;
            }
            else
            {
                yield return line;
                line = word;
            }
        }

        yield return line;
    }

    private static IEnumerable<string> Pieces(string word, int columns)
    {
        var (from, width, at) = (0, 0, 0);

        foreach (var rune in word.EnumerateRunes())
        {
            var wide = TextWidth.Of(SafeText.Show(rune.ToString()));

            if (width + wide > columns && at > from)
            {
                yield return word[from..at];
                (from, width) = (at, 0);
            }

            (width, at) = (width + wide, at + rune.Utf16SequenceLength);
        }

        yield return word[from..];
    }
}

using System.Globalization;
using System.Text;

namespace EditionRegister.Formats.Documents.Layout;

/// <summary>Breaks text into lines at spaces and between ideographs; a word longer than the line is broken between letters only if asked.</summary>
internal static class Wrapping
{
    /// <returns>The lines, or null if a word does not fit and <paramref name="breakWords"/> is false.</returns>
    public static IReadOnlyList<string>? Wrap(string text, Func<string, bool> fits, bool breakWords)
    {
        List<string> lines = [];

        foreach (var paragraph in text.ReplaceLineEndings("\n").Split('\n', '\u2028', '\u2029', '\v', '\f'))
        {
            if (!WrapParagraph(paragraph.Replace('\t', ' ').Trim(), fits, breakWords, lines))
            {
                return null;
            }
        }

        return lines;
    }

    private static bool WrapParagraph(string paragraph, Func<string, bool> fits, bool breakWords, List<string> lines)
    {
        var line = "";

        foreach (var word in Unbreakables(paragraph))
        {
            if (fits((line + word).TrimEnd()))
            {
                line += word;
                continue;
            }

            if (line.Length > 0)
            {
                lines.Add(line.TrimEnd());
            }

            line = word.TrimStart();

            if (!fits(line.TrimEnd()))
            {
                if (!breakWords)
                {
                    return false;
                }

                line = BreakWord(line, fits, lines);
            }
        }

        lines.Add(line.TrimEnd());
        return true;
    }

    // All full lines of an overlong word are added; what is left of it starts the next line, and is never a letter or two.
    private static string BreakWord(string word, Func<string, bool> fits, List<string> lines)
    {
        const int fewest = 3;
        List<string> line = [];
        List<string> before = [];

        foreach (var letter in Letters(word))
        {
            if (line.Count > 0 && !fits(string.Concat(line).TrimEnd() + letter.TrimEnd()))
            {
                AddLine(before);
                (before, line) = (line, []);
            }

            line.Add(letter);
        }

        var missing = Math.Min(fewest - line.Count, before.Count - fewest);

        if (missing > 0)
        {
            line.InsertRange(0, before[^missing..]);
            before.RemoveRange(before.Count - missing, missing);
        }

        AddLine(before);
        return string.Concat(line);

        void AddLine(List<string> full) => lines.AddRange(full.Count == 0 ? [] : [string.Concat(full)]);
    }

    private static IEnumerable<string> Letters(string word)
    {
        var letters = StringInfo.GetTextElementEnumerator(word);

        while (letters.MoveNext())
        {
            yield return letters.GetTextElement();
        }
    }

    // Each piece ends with the spaces after it, so that pieces joined are the text again.
    private static IEnumerable<string> Unbreakables(string text)
    {
        StringBuilder piece = new();
        Rune? before = null;

        foreach (var rune in text.EnumerateRunes())
        {
            var mayBreak = before is { } last
                && ((last.Value == ' ' && rune.Value != ' ') || (rune.Value != ' ' && (IsIdeographic(last) || IsIdeographic(rune)) && !Clings(rune)));

            if (mayBreak)
            {
                yield return piece.ToString();
                piece.Clear();
            }

            piece.Append(rune.ToString());
            before = rune;
        }

        yield return piece.ToString();
    }

    private static bool IsIdeographic(Rune rune) =>
        rune.Value is (>= 0x2E80 and <= 0x9FFF) or (>= 0xAC00 and <= 0xD7A3) or (>= 0xF900 and <= 0xFAFF) or (>= 0x20000 and <= 0x3FFFF);

    // Closing marks and combining signs stay with the letter before them.
    private static bool Clings(Rune rune) => Rune.GetUnicodeCategory(rune)
        is UnicodeCategory.ClosePunctuation or UnicodeCategory.FinalQuotePunctuation or UnicodeCategory.OtherPunctuation
        or UnicodeCategory.NonSpacingMark or UnicodeCategory.SpacingCombiningMark or UnicodeCategory.Format;
}

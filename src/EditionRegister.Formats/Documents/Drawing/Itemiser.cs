using System.Globalization;
using System.Text;
using EditionRegister.Formats.Documents.Layout;

namespace EditionRegister.Formats.Documents.Drawing;

/// <summary>A stretch of text in one font and one direction.</summary>
internal sealed record TextRun(string Text, ShelfFont Font, bool RightToLeft);

/// <summary>Cuts a line into runs of one font and direction, in the order they stand on paper from the left.</summary>
/// <remarks>
/// Of UAX #9 it has what a title needs: the first strong letter gives the line's direction, neutrals between two
/// right-to-left letters join them, numbers read left to right. Explicit embeddings are not looked at.
/// </remarks>
internal static class Itemiser
{
    private enum Kind
    {
        Neutral,
        Left,
        Right,
        Digit,
    }

    public static IReadOnlyList<TextRun> Split(string text, Face face, FontShelf shelf)
    {
        var letters = Letters(text);
        var kinds = letters.Select(KindOf).ToArray();
        var rightFirst = kinds.FirstOrDefault(kind => kind is Kind.Left or Kind.Right) == Kind.Right;
        var right = Directions(letters, kinds, rightFirst);
        List<TextRun> runs = [];

        for (var i = 0; i < letters.Count; i++)
        {
            var font = shelf.For(letters[i], face);

            if (runs.Count > 0 && ReferenceEquals(runs[^1].Font, font) && runs[^1].RightToLeft == right[i])
            {
                runs[^1] = runs[^1] with { Text = runs[^1].Text + letters[i] };
            }
            else
            {
                runs.Add(new(letters[i], font, right[i]));
            }
        }

        return OnPaper(runs, rightFirst);
    }

    // UAX #9 rule L2 for two levels.
    private static List<TextRun> OnPaper(List<TextRun> runs, bool rightFirst)
    {
        if (rightFirst)
        {
            runs.Reverse();
        }

        for (var start = 0; start < runs.Count; start++)
        {
            var end = start;

            while (end < runs.Count && runs[end].RightToLeft != rightFirst)
            {
                end++;
            }

            runs.Reverse(start, end - start);
            start = Math.Max(start, end);
        }

        return runs;
    }

    private static bool[] Directions(List<string> letters, Kind[] kinds, bool rightFirst)
    {
        var right = new bool[kinds.Length];

        for (var i = 0; i < kinds.Length; i++)
        {
            right[i] = kinds[i] switch
            {
                Kind.Right => true,
                Kind.Left or Kind.Digit => false,
                _ when JoinsDigits(letters, kinds, i) => false,
                _ => Strong(kinds, i, -1, rightFirst) == Strong(kinds, i, +1, rightFirst) ? Strong(kinds, i, -1, rightFirst) : rightFirst,
            };
        }

        return right;
    }

    private static bool JoinsDigits(List<string> letters, Kind[] kinds, int i) =>
        i > 0 && i + 1 < kinds.Length && kinds[i - 1] == Kind.Digit && kinds[i + 1] == Kind.Digit && letters[i] is "/" or "." or "," or ":" or "-" or "+";

    // Beyond the ends of the line stands the line's own direction; a number counts as what surrounds it.
    private static bool Strong(Kind[] kinds, int from, int step, bool rightFirst)
    {
        for (var i = from + step; i >= 0 && i < kinds.Length; i += step)
        {
            if (kinds[i] is Kind.Left or Kind.Right)
            {
                return kinds[i] == Kind.Right;
            }
        }

        return rightFirst;
    }

    private static List<string> Letters(string text)
    {
        List<string> letters = [];
        var elements = StringInfo.GetTextElementEnumerator(text);

        while (elements.MoveNext())
        {
            letters.Add(elements.GetTextElement());
        }

        return letters;
    }

    private static Kind KindOf(string letter)
    {
        var rune = Rune.GetRuneAt(letter, 0);

        return Rune.IsDigit(rune) ? Kind.Digit
            : IsRightToLeft(rune.Value) ? Kind.Right
            : Rune.IsLetter(rune) ? Kind.Left
            : Kind.Neutral;
    }

    private static bool IsRightToLeft(int value) => value
        is (>= 0x0590 and <= 0x08FF) or (>= 0xFB1D and <= 0xFDFF) or (>= 0xFE70 and <= 0xFEFE)
        or (>= 0x10800 and <= 0x10FFF) or (>= 0x1E800 and <= 0x1EFFF) or 0x200F;
}

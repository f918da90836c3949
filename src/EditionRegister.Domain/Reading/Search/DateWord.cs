namespace EditionRegister.Domain.Reading.Search;

/// <summary>One word among those of a date, looked at letter by letter.</summary>
internal static class DateWord
{
    // What stands behind or before a figure without changing it.
    private static readonly HashSet<string> BesideFigures = new(StringComparer.OrdinalIgnoreCase) { "st", "nd", "rd", "th", "er", "e", "mid" };

    public static bool HasItsSigns(string word) => word.All(c => char.IsLetterOrDigit(c) || "-–—/.,'’?~%();:".Contains(c, StringComparison.Ordinal));

    /// <summary>Whether the date reads otherwise, or not at all, without any of the letters or figures that stand together in a word: B2019 is the same as 2019.</summary>
    /// <param name="words">The words of the date.</param>
    /// <param name="at">Which of them.</param>
    /// <param name="read">How they read together.</param>
    /// <param name="reader">How a text reads.</param>
    public static bool CountsWhole(IReadOnlyList<string> words, int at, string? read, Func<string, string?> reader)
    {
        var word = words[at];
        var pieces = Pieces(word);

        return pieces.Count < 2 || IsDayMonthYear(word, pieces) || pieces.TrueForAll(piece =>
            BesideFigures.Contains(word[piece]) || read != reader(string.Join(' ', words.Select((one, index) => index == at ? Without(word, piece) : one))));
    }

    // Which of 9/10/2005 is the month nobody can say, and so neither changes how it is read.
    private static bool IsDayMonthYear(string word, List<Range> pieces) =>
        pieces is [var first, var second, var year] && word[first].Length <= 2 && word[second].Length <= 2 && word[year].Length == 4 && word.All(c => char.IsAsciiDigit(c) || c is '/' or '.');

    private static string Without(string word, Range piece)
    {
        var (start, length) = piece.GetOffsetAndLength(word.Length);

        // The sign between goes with it: 17/2019 is no year.
        return word.Remove(start, length).Trim('-', '–', '/', '.', ',');
    }

    /// <summary>Letters that stand together, and figures that do.</summary>
    private static List<Range> Pieces(string word)
    {
        List<Range> pieces = [];

        for (var at = 0; at < word.Length;)
        {
            var end = at + 1;

            while (end < word.Length && char.IsLetterOrDigit(word[at]) && char.IsLetterOrDigit(word[end]) && char.IsLetter(word[end]) == char.IsLetter(word[at]))
            {
                end++;
            }

            if (char.IsLetterOrDigit(word[at]))
            {
                pieces.Add(at..end);
            }

            at = end;
        }

        return pieces;
    }
}

namespace EditionRegister.Domain.Reading.Search;

/// <summary>Readers find a date or a number in the midst of anything; a run of words is one only where each of them has its part in it.</summary>
internal static class EveryWord
{
    // Between the words of a date, a number or a technique they join and change nothing.
    private static readonly HashSet<string> Joining = new(StringComparer.OrdinalIgnoreCase)
    {
        "of", "the", "proof", "in", "to", "or", "and", "than", "with", "du", "de", "des", "et", "und", "mit", "e", "y", "con", "a", "an", "from", "by", "no", "no.", "nr", "nr.", "number", "#", "-", "–", "/", "&", "+", ",",
    };

    /// <summary>The words as they stand, and then without those at their beginning that only lead in.</summary>
    public static IEnumerable<IReadOnlyList<string>> WithoutLead(IReadOnlyList<string> words, IReadOnlySet<string> leads)
    {
        yield return words;

        for (var first = 1; first < words.Count && leads.Contains(words[first - 1]); first++)
        {
            yield return [.. words.Skip(first)];
        }
    }

    /// <summary>Whether the text reads otherwise, or not at all, without any one of its words. The first and the last always count; between them joining words need not.</summary>
    /// <param name="words">The words.</param>
    /// <param name="read">How they read together.</param>
    /// <param name="reader">How a text reads.</param>
    public static bool Counts<T>(IReadOnlyList<string> words, T read, Func<string, T?> reader)
        where T : class
    {
        for (var at = 0; at < words.Count && words.Count > 1; at++)
        {
            var isBetween = at > 0 && at < words.Count - 1;

            if (!(isBetween && Joining.Contains(words[at])) && read.Equals(reader(Without(words, at))))
            {
                return false;
            }
        }

        return true;
    }

    private static string Without(IReadOnlyList<string> words, int at) => string.Join(' ', words.Where((_, index) => index != at));
}

using EditionRegister.Domain.Reading.Text;

namespace EditionRegister.Domain.Reading.Techniques;

/// <summary>One way in which something is written, cut into folded words.</summary>
/// <param name="Words">In their order.</param>
/// <param name="Technique">What it says; null for what has a word of printing in it and is no print.</param>
/// <param name="NeedsCompany">It is a technique only where another is named.</param>
internal sealed record Writing(string[] Words, Technique? Technique, bool NeedsCompany)
{
    /// <summary>"Etched", "engraved": said of a print, or of a glass.</summary>
    public bool IsParticiple { get; } = Words[^1].EndsWith("ed", StringComparison.Ordinal);
}

/// <summary>A writing met in a text, and the token after it.</summary>
internal readonly record struct Met(Writing Writing, int Start, int Next);

/// <summary>The writings of a list of techniques, found by their first word, the longest first.</summary>
internal sealed class TechniqueTable
{
    private readonly Dictionary<string, Writing[]>.AlternateLookup<ReadOnlySpan<char>> _byFirst;

    public TechniqueTable(IEnumerable<Technique> techniques, IEnumerable<string> notPrints)
    {
        IEnumerable<(string Text, Technique? Technique)> written =
        [
            .. from technique in techniques from text in technique.Writings.Prepend(technique.Name).Prepend(technique.Word) select (text, technique),
            .. from text in notPrints select (text, (Technique?)null),
        ];
        _byFirst = (
            from one in written
            from words in Spellings(Words(one.Text))
            orderby words.Length descending
            group new Writing(words, one.Technique, one.Text.StartsWith('~')) by words[0])
            .ToDictionary(same => same.Key, same => same.ToArray(), StringComparer.Ordinal).GetAlternateLookup<ReadOnlySpan<char>>();
    }

    public static TechniqueTable Shipped { get; } = new(Technique.All, NotPrints.Writings);

    /// <summary>Every writing of one word.</summary>
    public IEnumerable<Writing> OfOneWord => _byFirst.Dictionary.Values.SelectMany(same => same).Where(writing => writing.Words.Length == 1);

    /// <summary>The technique that is written in one word.</summary>
    public Technique? OfWord(ReadOnlySpan<char> word) =>
        _byFirst.TryGetValue(word, out var same) && same[^1] is { Words.Length: 1, NeedsCompany: false } writing ? writing.Technique : null;

    /// <summary>The longest writing that begins at a token.</summary>
    public Met? At(TokenText text, int at)
    {
        var word = text.Word(at);

        if (word.Length < 2)
        {
            return word.Length == 1 ? Longest(text, at, word) : null;
        }

        var (whole, stem) = (Longest(text, at, word), word[^1] == 's' ? Longest(text, at, word[..^1]) : null);

        return whole is { } one && stem is { } other ? (other.Next > one.Next ? other : one) : whole ?? stem;
    }

    /// <summary>"Line" before "and stipple engraving": the writing that begins with the word and ends as the one after the joining word does.</summary>
    public Writing? Elliptic(TokenText text, int at, Writing after)
    {
        if (after.Words.Length < 2 || !_byFirst.TryGetValue(text.Word(at), out var candidates))
        {
            return null;
        }

        return candidates.FirstOrDefault(candidate =>
            candidate.Words.Length > 1 && candidate.Words.Length <= after.Words.Length
            && candidate.Words.AsSpan(1).SequenceEqual(after.Words.AsSpan()[^(candidate.Words.Length - 1)..]));
    }

    private Met? Longest(TokenText text, int at, ReadOnlySpan<char> first)
    {
        if (!_byFirst.TryGetValue(first, out var candidates))
        {
            return null;
        }

        foreach (var writing in candidates)
        {
            if (EndOf(text, at, writing.Words) is var next and > 0)
            {
                return new Met(writing, at, next);
            }
        }

        return null;
    }

    /// <summary>The token after the words, or 0; a hyphen or an apostrophe may stand between them, and each may be a plural.</summary>
    private static int EndOf(TokenText text, int at, string[] words)
    {
        var next = at + 1;

        for (var i = 1; i < words.Length; i++, next++)
        {
            next = text.IsAnySign(next, "-'") ? next + 1 : next;

            if (!IsSame(text.Word(next), words[i]))
            {
                return 0;
            }
        }

        return next;
    }

    private static bool IsSame(ReadOnlySpan<char> word, string wanted) =>
        word.SequenceEqual(wanted) || (word.Length == wanted.Length + 1 && word[^1] == 's' && word.StartsWith(wanted));

    private static string[] Words(string text)
    {
        TokenText tokens = new(text.Normalize());

        return [.. from at in Enumerable.Range(0, tokens.Count) where tokens.IsWord(at) select tokens.Word(at).ToString()];
    }

    /// <summary>"Soft ground" is written as one word too.</summary>
    private static IEnumerable<string[]> Spellings(string[] words) =>
        words is [{ Length: > 3 } first, { Length: > 2 } second, .. var rest] ? [words, [first + second, .. rest]] : words.Length == 0 ? [] : [words];
}

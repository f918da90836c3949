using EditionRegister.Domain.Reading.Text;

namespace EditionRegister.Domain.Reading.Techniques;

/// <summary>Which technique a mistyped word may mean. Nothing is read from it: a person is asked.</summary>
internal static class NearlyWritten
{
    private const int Shortest = 6;
    private const int Longest = 30;
    private const int MostWords = 12;

    public static Technique? Of(string phrase)
    {
        TokenText text = new(phrase);

        for (var at = 0; at < Math.Min(text.Count, MostWords); at++)
        {
            if (text.Word(at) is { Length: >= Shortest and <= Longest } word && Nearest(word.ToString()) is { } meant)
            {
                return meant;
            }
        }

        return null;
    }

    // An engraver is a person.
    private static Technique? Nearest(string word) => word.TrimEnd('s').EndsWith("er", StringComparison.Ordinal) ? null
        : TechniqueTable.Shipped.OfOneWord.FirstOrDefault(writing => writing is { Technique: not null, NeedsCompany: false } && writing.Words[0].Length >= Shortest && IsOneSlipFrom(word, writing.Words[0]))?.Technique;

    /// <summary>One letter too many, too few, another, or two the wrong way round.</summary>
    private static bool IsOneSlipFrom(string word, string written)
    {
        var begin = 0;

        while (begin < word.Length && begin < written.Length && word[begin] == written[begin])
        {
            begin++;
        }

        var here = word.AsSpan(begin);
        var there = written.AsSpan(begin);

        return (here.Length > 0 && here[1..].SequenceEqual(there))
            || (there.Length > 0 && there[1..].SequenceEqual(here))
            || (here.Length > 0 && there.Length > 0 && here[1..].SequenceEqual(there[1..]))
            || (here.Length > 1 && there.Length > 1 && here[0] == there[1] && here[1] == there[0] && here[2..].SequenceEqual(there[2..]));
    }
}

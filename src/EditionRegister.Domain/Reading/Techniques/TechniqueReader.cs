using EditionRegister.Domain.Reading.Inscriptions;
using EditionRegister.Domain.Reading.Text;

namespace EditionRegister.Domain.Reading.Techniques;

/// <summary>What was read in the words for a technique: the techniques in their order, how many colours, and what it is printed on.</summary>
/// <param name="Techniques">None where no word of printmaking was met.</param>
/// <param name="Colours">How many colours the text says, or null.</param>
/// <param name="Support">The words after "on", as written, or null.</param>
/// <param name="Left">Words that were not understood, as written; they stay with the text.</param>
public sealed record TechniqueRead(IReadOnlyList<Technique> Techniques, int? Colours, string? Support, IReadOnlyList<string> Left);

/// <summary>Finds techniques of printmaking in free text: "reduction linocut in 4 colours on Japanese paper".</summary>
public static class TechniqueReader
{
    // The longest writing first where one begins another; by its first word.
    private static readonly Dictionary<string, (string[] Words, Technique Technique)[]> ByFirst = (
        from technique in Technique.All
        from writing in technique.Writings
        let words = writing.Split(' ', '-')
        orderby words.Length descending
        group (words, technique) by words[0]).ToDictionary(same => same.Key, same => same.ToArray(), StringComparer.Ordinal);

    public static TechniqueRead Read(string? text)
    {
        if (string.IsNullOrWhiteSpace(text))
        {
            return new TechniqueRead([], null, null, []);
        }

        TokenText tokens = new(text);
        List<Technique> met = [];
        List<string> left = [];
        int? colours = null;
        var at = 0;

        // A support ends what is printed; a medium may follow a comma or a line break.
        for (string? support = null; ; at++)
        {
            if (at >= tokens.Count)
            {
                return new TechniqueRead(WithoutWhole(met), colours, support, left);
            }

            if (tokens.Word(at) is "on" or "auf" or "sur" or "su" or "sobre" && met.Count > 0 && support is null)
            {
                support = Support(tokens, at + 1, out at);
            }
            else if (At(tokens, at, out var next) is { } technique)
            {
                met.Add(technique);
                at = next - 1;
            }
            else if (Numerals.Cardinal(tokens, at) is { } count && count.Value <= 60 && tokens.Word(count.Next) is "color" or "colors" or "colour" or "colours" or "couleurs" or "farben" or "colori" or "colores")
            {
                colours = count.Value;
                at = count.Next;
            }
            else if (tokens.IsWord(at) && !IsJoining(tokens.Word(at)))
            {
                left.Add(tokens.Written(at).ToString());
            }
        }
    }

    private static bool IsJoining(ReadOnlySpan<char> word) =>
        word is "and" or "with" or "in" or "et" or "und" or "mit" or "e" or "con" or "y" or "a" or "an" or "the" or "of" or "or" or "from" or "to" or "by" or "s";

    private static Technique? At(TokenText text, int at, out int next)
    {
        next = at;

        if (!text.IsWord(at) || !ByFirst.GetAlternateLookup<ReadOnlySpan<char>>().TryGetValue(WithoutPlural(text.Word(at)), out var writings) && !ByFirst.GetAlternateLookup<ReadOnlySpan<char>>().TryGetValue(text.Word(at), out writings))
        {
            return null;
        }

        foreach (var (words, technique) in writings)
        {
            if (Matches(text, at, words, out next))
            {
                return technique;
            }
        }

        return null;
    }

    private static ReadOnlySpan<char> WithoutPlural(ReadOnlySpan<char> word) => word is [.. var stem, 's'] && stem.Length > 3 ? stem : word;

    private static bool Matches(TokenText text, int at, string[] words, out int next)
    {
        next = at;

        for (var i = 0; i < words.Length; i++)
        {
            next = i > 0 && text.IsSign(next, '-') ? next + 1 : next;
            var word = text.Word(next);

            if (!word.SequenceEqual(words[i]) && !(i == words.Length - 1 && WithoutPlural(word).SequenceEqual(words[i])))
            {
                return false;
            }

            next++;
        }

        return true;
    }

    /// <summary>"print" says nothing beside an etching.</summary>
    private static List<Technique> WithoutWhole(List<Technique> met) =>
        [.. met.Where(technique => technique.Word != "print" || met.All(other => other.Word == "print")).Distinct()];

    private static string? Support(TokenText text, int at, out int last)
    {
        var end = at;

        while (end < text.Count && !text.IsAnySign(end, ";,|(["))
        {
            end++;
        }

        last = Math.Max(at, end) - 1;

        return end > at ? text.Text[text[at].Start..text[end - 1].End] : null;
    }
}

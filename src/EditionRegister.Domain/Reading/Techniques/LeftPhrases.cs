using System.Collections.Frozen;
using EditionRegister.Domain.Reading.Text;

namespace EditionRegister.Domain.Reading.Techniques;

/// <summary>What of a text was not understood, phrase by phrase as written, without the words that only join.</summary>
internal static class LeftPhrases
{
    private static readonly FrozenSet<string>.AlternateLookup<ReadOnlySpan<char>> Joining = (
        "and with in on over et und mit e con y a an the of or from to by s l d en avec sur auf su sobre von aus de di da al alla using").Split(' ')
        .ToFrozenSet(StringComparer.Ordinal).GetAlternateLookup<ReadOnlySpan<char>>();

    public static IReadOnlyList<string> Of(TokenText text, bool[] read)
    {
        List<string> phrases = [];

        for (var at = 0; at < text.Count; at++)
        {
            var from = at;
            var isBracket = text.IsSign(at, '(');

            while (at < text.Count && !read[at] && !text.IsAnySign(at, ",;|") && !(isBracket && text.IsSign(at, ')')))
            {
                at++;
            }

            if (Trimmed(text, from, at) is { } phrase)
            {
                phrases.Add(phrase);
            }
        }

        return phrases;
    }

    public static bool IsJoining(ReadOnlySpan<char> word) => Joining.Contains(word);

    private static string? Trimmed(TokenText text, int from, int to)
    {
        while (from < to && IsIdle(text, from))
        {
            from++;
        }

        var opened = LastOpened(text, from, to);

        while (to > from && IsIdle(text, to - 1) && !(opened >= from && opened < to && text.IsAnySign(to - 1, ")]")))
        {
            to--;
        }

        // "Printed" before something read says nothing of its own.
        return from == to || (to - from == 1 && text.IsWord(from, "printed")) ? null : text.Text[text[from].Start..text[to - 1].End];
    }

    // A question mark is a doubt, and stays.
    private static bool IsIdle(TokenText text, int at) => text.IsWord(at) ? IsJoining(text.Word(at)) && !IsTied(text, at) : !text.IsDigits(at) && !text.IsAnySign(at, "?#");

    // The e of "hashira-e" and the d of "d'après" join nothing.
    private static bool IsTied(TokenText text, int at) => (text.IsSign(at - 1, '-') && !text.IsApart(at)) || (text.IsSign(at + 1, '\'') && !text.IsApart(at + 1));

    private static int LastOpened(TokenText text, int from, int to)
    {
        var at = to - 1;

        while (at >= from && !text.IsAnySign(at, "(["))
        {
            at--;
        }

        return at;
    }
}

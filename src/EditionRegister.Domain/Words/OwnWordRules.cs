using EditionRegister.Domain.Numbers;

namespace EditionRegister.Domain.Words;

/// <summary>What a word, a name and a mark must be that a register adds for itself.</summary>
internal static class OwnWordRules
{
    private const int Longest = 40;

    public static void Free(string what, string word, string? known)
    {
        if (word.Length is 0 or > Longest || !char.IsAsciiLetterLower(word[0]) || word[^1] == '-' || !word.All(c => char.IsAsciiLetterLower(c) || char.IsAsciiDigit(c) || c == '-'))
        {
            throw WordRefusals.NotKebab(word);
        }

        if (known is not null)
        {
            throw WordRefusals.Known(what, word, known);
        }
    }

    public static void Named(string name)
    {
        if (string.IsNullOrWhiteSpace(name) || name.Trim().Length > Longest)
        {
            throw WordRefusals.NameMissing();
        }
    }

    public static void Marked(string mark, IEnumerable<NumberingKind> others)
    {
        if (!OwnMark.IsOne(mark.Trim()))
        {
            throw OwnMark.TakenFor(mark.Trim(), []) is { } read ? WordRefusals.MarkTaken(mark, read) : WordRefusals.MarkUnfit(mark);
        }

        if (OwnMark.TakenFor(mark.Trim(), others) is { } taken)
        {
            throw WordRefusals.MarkTaken(mark, taken);
        }
    }

    public static void Counts(bool inSize, bool inTotal)
    {
        if (inSize && !inTotal)
        {
            throw WordRefusals.SizeWithoutTotal();
        }
    }

    public static string YesNo(bool yes) => yes ? "yes" : "no";
}

using EditionRegister.Domain.Reading.Text;

namespace EditionRegister.Domain.Reading.Lettering;

/// <summary>Finds a person's or a firm's name beside a token: capitals, initials, and the small words within names.</summary>
internal static class NameWords
{
    // No name in lettering is longer, and what would be is a sentence.
    private const int Longest = 14;

    /// <summary>The first token of the name that ends before a token, or null where no name stands there.</summary>
    public static int? Before(TokenText text, int at)
    {
        var first = at;

        if (IsJoining(text, at - 1))
        {
            return null;
        }

        for (var next = at - 1; next >= 0 && at - next <= Longest && IsPart(text, next); next--)
        {
            first = IsHead(text, next) ? next : first;
        }

        first = OverPrivilege(text, first, at);

        return first < at ? first : null;
    }

    /// <summary>The token after the name that begins at a token, or null where none begins.</summary>
    public static int? Behind(TokenText text, int at)
    {
        var end = at;
        var hasHead = false;

        for (var next = at; next < text.Count && next - at < Longest && IsPart(text, next) && !IsLineHead(text, next) && RoleWords.At(text, next) is null; next++)
        {
            var isHead = IsHead(text, next);
            hasHead |= isHead;
            end = isHead || (text.IsSign(next, '.') && IsAbbreviated(text, next)) || IsTail(text.Word(next)) ? next + 1 : end;
        }

        return hasHead ? end : null;
    }

    /// <summary>Photo: and Druck: begin something else.</summary>
    private static bool IsLineHead(TokenText text, int at) => text.IsWord(at) && text.IsSign(at + 1, ':');

    /// <summary>A word with a capital, as names have.</summary>
    private static bool IsHead(TokenText text, int at) => text.IsWord(at) && char.IsUpper(text.Written(at)[0]);

    private static bool IsPart(TokenText text, int at) =>
        IsHead(text, at) || IsJoining(text, at) || IsTail(text.Word(at))
        || text.Word(at) is "de" or "du" or "des" or "la" or "le" or "d" or "l" or "von" or "van" or "der" or "den" or "ten" or "di" or "da" or "dal"
        || text.IsSign(at, '\'')
        || (text.IsSign(at, '-') && !text.IsApart(at) && !text.IsApart(at + 1))
        || (text.IsSign(at, '.') && IsAbbreviated(text, at));

    private static bool IsJoining(TokenText text, int at) => text.IsSign(at, '&') || text.Word(at) is "et" or "and" or "und" or "y";

    private static bool IsTail(ReadOnlySpan<char> word) => word is "fils" or "cie" or "co" or "jun" or "sen" or "freres";

    /// <summary>A dot that ends an initial or a name cut short, not a sentence.</summary>
    private static bool IsAbbreviated(TokenText text, int at) =>
        text.IsWord(at - 1) && !text.IsApart(at) && (text[at - 1].Length <= 3 || text.Word(at - 1) is "thos" or "chas" or "robt" or "saml" or "benj" or "willm" or "senr" or "junr" or "sohn");

    /// <summary>C.P.S.C.M., C.P.R. and A.P.D.R. (DCRMR, Appendix J) before a name are a privilege.</summary>
    private static int OverPrivilege(TokenText text, int first, int at)
    {
        Span<char> letters = stackalloc char[5];
        var (count, next) = (0, first);

        while (count < letters.Length && next < at && text.Word(next) is [var letter] && text.IsSign(next + 1, '.'))
        {
            letters[count++] = letter;
            next += 2;
        }

        return letters[..count] is "cpscm" or "cpr" or "cpes" or "apdr" ? next : first;
    }
}

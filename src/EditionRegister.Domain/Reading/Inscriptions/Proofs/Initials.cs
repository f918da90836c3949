using System.Collections.Frozen;
using EditionRegister.Domain.Reading.Lettering;
using EditionRegister.Domain.Reading.Text;

namespace EditionRegister.Domain.Reading.Inscriptions.Proofs;

/// <summary>The marks of kinds of proof: AP, A.P., A/P, A. P., a.p., PdA; not the beginning of longer initials, nor somebody's name.</summary>
internal static class Initials
{
    /// <summary>The most letters of a mark written in one.</summary>
    public const int Longest = 4;

    // A/P, E.A., P.d.A. and P/A, H.C. and F.C., B.A.T. and R.T.P., P/E as glossaries of the trade give them; W/P from memory.
    private static readonly FrozenDictionary<string, string>.AlternateLookup<ReadOnlySpan<char>> Marks = new Dictionary<string, string>(StringComparer.Ordinal)
    {
        ["ap"] = Series.Artists, ["ea"] = Series.Artists, ["pda"] = Series.Artists, ["pa"] = Series.Artists,
        ["pp"] = Series.Printers, ["hc"] = Series.HorsCommerce, ["fc"] = Series.HorsCommerce, ["bat"] = Series.BonATirer, ["rtp"] = Series.BonATirer,
        ["tp"] = Series.Trial, ["ctp"] = Series.ColourTrial, ["wp"] = Series.Working, ["cp"] = Series.Cancellation, ["pe"] = Series.State, ["sp"] = Series.Ambiguous,
    }.ToFrozenDictionary(StringComparer.Ordinal).GetAlternateLookup<ReadOnlySpan<char>>();

    /// <summary>The mark that begins at a token, or null.</summary>
    public static SeriesMet? At(TokenText text, int at) =>
        !text.IsWord(at) || text[at].Length > Longest ? null : text[at].Length == 1 ? Spelled(text, at) : Joined(text, at);

    private static SeriesMet? Joined(TokenText text, int at)
    {
        var written = text.Written(at);
        var plural = written.Length > 2 && written[^1] == 's' && char.IsAsciiLetterUpper(written[0]);
        var word = plural ? text.Word(at)[..^1] : text.Word(at);

        if (!Marks.TryGetValue(word, out var series) || IsPartOfACode(text, at))
        {
            return null;
        }

        // "Bat" and "Ap" are words; "PdA" is how it is written.
        var capitals = !(plural ? written[..^1] : written).ContainsAnyExceptInRange('A', 'Z') || written is "PdA";
        var small = !written.ContainsAnyExceptInRange('a', 'z');

        if (!capitals && !small)
        {
            return null;
        }

        var next = text.IsSign(at + 1, '.') && !text.IsApart(at + 1) ? at + 2 : at + 1;

        return new SeriesMet(series, at, next, small ? OfSmall(text, word) : OfCapitals(text, at, next, word)) { IsPlural = plural };
    }

    /// <summary>HC-1199-C, AP'T, US-AP; but AP-3 is the third.</summary>
    private static bool IsPartOfACode(TokenText text, int at) =>
        (text.IsAnySign(at + 1, "-'&") && !text.IsApart(at + 1) && !(text.IsSign(at + 1, '-') && text.Figure(at + 2) < 100 && !text.IsSign(at + 3, '-'))) || (text.IsAnySign(at - 1, "-'&@") && !text.IsApart(at) && at > 1);

    private static Certainty OfSmall(TokenText text, ReadOnlySpan<char> word) => text.Count <= 2 && word is not ("pa" or "pe" or "bat") ? Certainty.Doubtful : Certainty.Silent;

    private static Certainty OfCapitals(TokenText text, int at, int next, ReadOnlySpan<char> word)
    {
        var isAlone = IsAlone(text, at, next);

        if (word is "ap" or "bat" or "rtp" or "ctp" or "pda")
        {
            return IsWithinProse(text, at) || text.IsSign(next, '[') || (text.IsSign(next, '"') && text.IsSign(next + 1, '(')) ? Certainty.Doubtful : Certainty.Sure;
        }

        // Pennsylvania, and a pair of anybody's initials.
        return isAlone ? Certainty.Sure
            : word is "pa" or "pe" ? Certainty.Silent
            : IsSegment(text, at, next) ? Certainty.Sure
            : Certainty.Doubtful;
    }

    private static bool IsAlone(TokenText text, int at, int next) =>
        (at == 0 || (at == 1 && text.IsAnySign(0, "\"([")) || IsBehindPlace(text, at)) && (next >= text.Count || (next == text.Count - 1 && text.IsAnySign(next, "\")].")));

    private static bool IsSegment(TokenText text, int at, int next) =>
        (at == 0 || text.IsAnySign(at - 1, "/|,;(")) && (next >= text.Count || text.IsAnySign(next, "/|,;)"));

    /// <summary>Below AP, above P: small words around it make a sentence, and the letters a description.</summary>
    private static bool IsWithinProse(TokenText text, int at) =>
        text.Word(at - 1) is "below" or "above" or "with" or "mark" or "marks" or "under" or "of" or "in" or "on" or "by" or "stamped" or "letters" or "initials";

    /// <summary>Letters with dots or slashes between.</summary>
    private static SeriesMet? Spelled(TokenText text, int at)
    {
        if (IsWithinInitials(text, at))
        {
            return null;
        }

        Span<char> letters = stackalloc char[Longest];
        var (count, next, slashed) = (0, at, false);
        (SeriesMet? found, var isSmall) = (null, text.Written(at) is [>= 'a' and <= 'z']);

        while (count < Longest && text.Word(next) is [var letter])
        {
            letters[count++] = letter;
            next++;

            if (count > 1 && Marks.TryGetValue(letters[..count], out var series) && End(text, next) is { } end)
            {
                found = new SeriesMet(series, at, end, CertaintyOfSpelled(text, at, end, letters[..count], slashed, isSmall));
            }

            if (!text.IsAnySign(next, "./") || text.IsApart(next))
            {
                break;
            }

            slashed |= text.IsSign(next, '/');
            next++;
        }

        return found is { } met && !(met.Certainty == Certainty.Silent && !isSmall && IsAName(text, at, met.Next)) ? met : null;
    }

    private static Certainty CertaintyOfSpelled(TokenText text, int at, int end, ReadOnlySpan<char> letters, bool slashed, bool isSmall)
    {
        if (letters.Length > 2 || slashed)
        {
            return Certainty.Sure;
        }

        var isKnown = letters is "ap";

        if ((!isSmall && IsAName(text, at, end)) || (isSmall && letters is "hc" && text.IsSign(at - 1, '.') && text.Word(at - 2) is "dr" or "prof"))
        {
            return Certainty.Silent;
        }

        return isKnown || (!text.IsWord(end) && !isSmall) || (isSmall && letters is "hc" or "ea") ? Certainty.Sure
            : !isSmall && text.IsWord(end) && RoleWords.IsNear(text, end) ? Certainty.Silent
            : Certainty.Doubtful;
    }

    /// <summary>The end of a mark, over its last dot; null where E.A.D. and A.P.S. go on, or where the letter begins a word.</summary>
    private static int? End(TokenText text, int at)
    {
        var next = text.IsSign(at, '.') && !text.IsApart(at) ? at + 1 : at;
        var goesOn = (text.IsSign(next - 1, '.') || text.IsSign(next, '.')) && text.Word(next).Length == 1 && !text.IsApart(next);

        return goesOn || (text.IsWord(next) && !text.IsApart(next) && !text.IsSign(next - 1, '.')) || (text.IsSign(next, '\'') && !text.IsApart(next) && text.IsWord(next + 1)) ? null : next;
    }

    /// <summary>G. A. P. are three of somebody's initials, but l.c. A.P. is a place and a mark.</summary>
    private static bool IsWithinInitials(TokenText text, int at) =>
        text.IsSign(at - 1, '.') && text.IsWord(at - 2) && text[at - 2].Length == 1 && !IsBehindPlace(text, at);

    /// <summary>L.L., l.c., u.r.: where on the sheet it stands.</summary>
    private static bool IsBehindPlace(TokenText text, int at)
    {
        var last = text.IsSign(at - 1, ':') ? at - 2 : at - 1;
        last = text.IsSign(last, '.') ? last - 1 : last;

        return text.Word(last) is "l" or "c" or "r" && text.IsSign(last - 1, '.') && text.Word(text.IsSign(last - 2, '.') ? last - 3 : last - 2) is "l" or "u" or "c" or "b";
    }

    /// <summary>By T. P. Somebody: a small word before, a name behind.</summary>
    private static bool IsAName(TokenText text, int at, int next) =>
        text.Written(at - 1) is [>= 'a' and <= 'z', ..] && text.Written(next) is [>= 'A' and <= 'Z', >= 'a' and <= 'z', ..];
}

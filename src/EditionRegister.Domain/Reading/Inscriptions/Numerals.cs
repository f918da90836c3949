using EditionRegister.Domain.Reading.Text;

namespace EditionRegister.Domain.Reading.Inscriptions;

/// <summary>Reads numbers as people write them: 12, 1,250, XII, xxxx, twelve, douze, and ? where one is missing.</summary>
internal static class Numerals
{
    private const int LongestRoman = 12;

    public static Numeral? Arabic(TokenText text, int at)
    {
        if (text.Figure(at) is not { } value || text.Written(at) is ['0', ..])
        {
            return null;
        }

        // 1,575 and 1.250: a group of exactly three after a tight sign.
        return text.IsAnySign(at + 1, ",.") && !text.IsApart(at + 1) && !text.IsApart(at + 2) && text[at].Length <= 3
            && text.IsDigits(at + 2) && text[at + 2].Length == 3 && text.Figure(at + 2) is { } group
            ? new Numeral(NumeralKind.Arabic, (value * 1_000) + group, at + 3)
            : new Numeral(NumeralKind.Arabic, value, at + 1);
    }

    /// <summary>A number that was filled up to the width of the size: 07/35, 003/150.</summary>
    public static Numeral? Padded(TokenText text, int at) =>
        text.Written(at) is ['0', ..] && text.Figure(at) is > 0 and { } value && text.IsSign(at + 1, '/') && text.IsDigits(at + 2) && text[at + 2].Length == text[at].Length
            ? new Numeral(NumeralKind.Arabic, value, at + 1)
            : null;

    /// <summary>Roman numerals, irregular ones too (XXXX, IIII), all in capitals or all in small letters.</summary>
    public static Numeral? Roman(TokenText text, int at) => RomanValue(text.Written(at)) is { } value ? new Numeral(NumeralKind.Roman, value, at + 1) : null;

    /// <summary>Capitals and small letters together (XXv) as well, where a fraction leaves no other meaning.</summary>
    public static Numeral? MixedRoman(TokenText text, int at) =>
        text.IsWord(at) && text[at].Length is > 1 and <= LongestRoman && !HasOther(text.Word(at)) && RomanValue(text.Word(at)) is { } value ? new Numeral(NumeralKind.Roman, value, at + 1) : null;

    public static Numeral? Either(TokenText text, int at) =>
        text.IsDigits(at) ? Arabic(text, at) : text.IsSign(at, '?') ? new Numeral(NumeralKind.Unknown, 0, at + 1) : Roman(text, at);

    /// <summary>Digits or a number word.</summary>
    public static Numeral? Cardinal(TokenText text, int at) => text.IsDigits(at) ? Arabic(text, at) : NumberWords.Cardinal(text, at);

    /// <summary>The value of a word that is nothing but roman numerals, or null.</summary>
    public static int? RomanValue(ReadOnlySpan<char> word)
    {
        if (word.Length is 0 or > LongestRoman)
        {
            return null;
        }

        var small = char.IsAsciiLetterLower(word[0]);
        var (sum, before, last) = (0, int.MaxValue, int.MaxValue);

        foreach (var letter in word)
        {
            var value = char.IsAsciiLetterLower(letter) == small ? Value((char)(letter | 0x20)) : 0;

            if (value == 0 || !MayFollow(value, before, last))
            {
                return null;
            }

            sum += value > before ? value - (2 * before) : value;
            (last, before) = (before, value);
        }

        return sum is > 0 and < 4_000 ? sum : null;
    }

    /// <summary>XXXX and IIII are written; but only I, X and C go off the next, once, and five, fifty and five hundred stand once: DILLM, XLXL and VV are none.</summary>
    private static bool MayFollow(int value, int before, int last) =>
        value > before ? value <= 10 * before && before is 1 or 10 or 100 && last >= value
        : value == before ? value is 1 or 10 or 100 or 1_000
        : !(value == last && before > last);

    private static bool HasOther(ReadOnlySpan<char> word) => word.IndexOfAnyExcept("ivxlc") >= 0;

    private static int Value(char letter) => letter switch { 'i' => 1, 'v' => 5, 'x' => 10, 'l' => 50, 'c' => 100, 'd' => 500, 'm' => 1_000, _ => 0 };
}

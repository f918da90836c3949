using EditionRegister.Domain.Reading.Inscriptions.Editions;
using EditionRegister.Domain.Reading.Text;

namespace EditionRegister.Domain.Reading.Inscriptions;

/// <summary>Numbers that may be a copy's, or an edition's size, or neither: 40 alone, Numbered 86, imp. IV, 20 of the edition.</summary>
internal static class FaintNumbers
{
    // 22 [lifetime cast] is an edition's field; more words are a sentence.
    private const int LongestField = 6;
    private const int LongestNote = 16;

    /// <summary>40 in an edition's field, or 14 (posthumous), 6 [?], No. 4, numbered in pencil, verso: 105.</summary>
    public static bool IsBare(TokenText text)
    {
        var first = text.IsAnySign(0, "#") ? 1 : text.Word(0) is "no" or "nr" ? text.IsSign(1, '.') ? 2 : 1 : 0;

        if (text.IsDigits(first) || (Numerals.Roman(text, first) is not null && text[first].Length > 1))
        {
            return first + 1 == text.Count || (first == 0 && text.IsAnySign(1, "([") && text.IsAnySign(text.Count - 1, ")]") && text.Count <= LongestField);
        }

        var last = text.IsSign(text.Count - 1, '.') ? text.Count - 2 : text.Count - 1;

        return text.IsWord(0, "numbered") && text.Count <= LongestNote && text.IsDigits(last) && !text.IsAnySign(last - 1, "-/.");
    }

    /// <summary>Something is said of the edition, and nobody can tell its size; an impression has a number of its own.</summary>
    public static bool IsOne(TokenText text, int at)
    {
        if (text.IsWord(at, "imp"))
        {
            var next = text.IsSign(at + 1, '.') ? at + 2 : at + 1;

            return (Numerals.Roman(text, next) is not null || text.Figure(next) < 100) && next + 1 == text.Count && text.IsApart(next);
        }

        return EditionWords.IsOne(text.Word(at)) && text.IsWord(at - 1, "the") && text.IsWord(at - 2, "of") && text.IsDigits(at - 3);
    }
}

using EditionRegister.Domain.Reading.Text;

namespace EditionRegister.Domain.Reading.Papers;

/// <summary>Finds the maker's or dealer's lot: lot 12, batch no. A7, Charge 2019-3.</summary>
internal static class Lots
{
    private const int MostTokens = 12;

    public static string? At(TokenText text, int at, out int next)
    {
        next = at;

        if (text.Word(at) is not ("lot" or "batch" or "charge" or "chargen" or "lotto" or "lote"))
        {
            return null;
        }

        var start = Value(text, at + 1);
        var end = start;
        var hasDigit = false;

        while (end < text.Count && end < start + MostTokens && (end == start || !text.IsApart(end)) && (text.IsWord(end) || text.IsDigits(end) || (text.IsAnySign(end, "-/._") && end > start)))
        {
            hasDigit |= text.IsDigits(end);
            end++;
        }

        while (end > start && text.IsAnySign(end - 1, "-/._"))
        {
            end--;
        }

        // "a lot of paper" is none.
        if (end == start || PaperRest.IsInAFigure(text, end) || !(hasDigit || text.Written(start) is [>= 'A' and <= 'Z']))
        {
            return null;
        }

        next = end;

        return text.Text[text[start].Start..text[end - 1].End];
    }

    /// <summary>Behind what only says that a number follows: no., Nr., n°, #, a hyphen or a colon.</summary>
    private static int Value(TokenText text, int at)
    {
        at = text.IsSign(at, '-') ? at + 1 : at;
        at = text.Word(at) is "no" or "nr" or "number" or "num" or "nummer" or "numero" ? at + 1 : text.IsWord(at, "n") && text.IsAnySign(at + 1, "\u00B0\u00BA") ? at + 2 : at;

        return text.IsAnySign(at, ".:#=") ? at + 1 : at;
    }
}

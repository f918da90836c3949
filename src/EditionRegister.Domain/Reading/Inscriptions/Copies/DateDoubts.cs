using EditionRegister.Domain.Reading.Text;

namespace EditionRegister.Domain.Reading.Inscriptions.Copies;

/// <summary>Figures that may be a day or a month: 11/69 behind a name, 7/26 behind a place, 8/18 in a list of dates.</summary>
internal static class DateDoubts
{
    public static bool IsOne(TokenText text, Fraction fraction, Surroundings around)
    {
        var (one, two, at) = (fraction.Number.Value, fraction.Size.Of ?? 0, fraction.Start);
        var isDay = DateParts.IsDay(one, two);

        if (isDay && (around.HasDate || IsBeforeFigure(text, fraction.Next) || IsInQuotation(text, fraction, around)))
        {
            return true;
        }

        // 3/12 1/98: the number, and when.
        if (one <= 12 && two is > 31 and < 100 && text.IsDigits(at - 1) && text.IsSign(at - 2, '/'))
        {
            return true;
        }

        if (at == 0)
        {
            return DateParts.IsSpanOfYears(one, two) && fraction.Next < text.Count;
        }

        if (!text.IsWord(at - 1) && !(text.IsAnySign(at - 1, ".,)]/:-") && !text.IsDigits(at - 2)))
        {
            return false;
        }

        return DateParts.IsOddMonthAndYear(one, two) || DateParts.IsOddDay(one, two)
            || (isDay && one <= 12 && text.IsSign(at - 1, ',') && text.Written(at - 2) is [_, >= 'a', ..])
            || (DateParts.IsSpanOfYears(one, two) && !text.IsAnySign(at - 1, ",("));
    }

    /// <summary>7/28 1: a day, and a figure of some list; 39/100 1 of 2 is a copy.</summary>
    private static bool IsBeforeFigure(TokenText text, int at) => text.IsDigits(at) && text[at].Length == 1 && !text.IsWord(at + 1, "of") && !text.IsSign(at + 1, '/');

    /// <summary>"Lom 7/16": somebody wrote where and when; so titles are written as well, and nobody can tell.</summary>
    private static bool IsInQuotation(TokenText text, Fraction fraction, Surroundings around)
    {
        var next = text.IsSign(fraction.Next, '.') ? fraction.Next + 1 : fraction.Next;

        return fraction.Number.Value <= 12 && around.IsQuoted(fraction.Start) && text.IsSign(next, '"') && !text.IsAnySign(fraction.Start - 1, "\"|");
    }
}

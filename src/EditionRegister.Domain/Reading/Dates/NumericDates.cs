using EditionRegister.Domain.Reading.Text;

namespace EditionRegister.Domain.Reading.Dates;

/// <summary>
/// Dates in figures: 2026-03-01, 3/13/1929, 17.2.1877, 10/1917. Two figures for the year are never read here: 5/11 may be a month,
/// a day or the fifth sheet of eleven.
/// </summary>
internal static class NumericDates
{
    public static DateSaid? At(TokenText text, int at)
    {
        if (!text.IsDigits(at) || !text.IsAnySign(at + 1, "-/.") || text.Figure(at) is not { } first || text.Figure(at + 2) is not { } second)
        {
            return null;
        }

        var sign = text.Written(at + 1)[0];

        if (!IsTight(text, at, sign))
        {
            return null;
        }

        return text.IsSign(at + 3, sign) && text.Figure(at + 4) is { } third && IsTight(text, at + 2, sign) ? Day(text, at, (first, second, third), sign) : Month(text, at, first, second);
    }

    // German writes 17. 2. 1877 with spaces; a dash with spaces joins two dates.
    private static bool IsTight(TokenText text, int at, char sign) => sign != '-' || (!text.IsApart(at + 1) && !text.IsApart(at + 2));

    private static DateSaid? Day(TokenText text, int at, (int First, int Second, int Third) figures, char sign)
    {
        var (first, second, third) = figures;

        if (text[at].Length == 4)
        {
            return text[at + 2].Length <= 2 && text[at + 4].Length <= 2 ? MonthDates.Day(first, second, third, at + 5) : null;
        }

        if (text[at].Length > 2 || text[at + 2].Length > 2 || text[at + 4].Length != 4 || third == 0)
        {
            return null;
        }

        // Dots are written where the day comes first; slashes and dashes are written in both orders.
        return first > 12 || (sign == '.' && second <= 12) ? MonthDates.Day(third, second, first, at + 5)
            : second > 12 || first == second ? MonthDates.Day(third, first, second, at + 5)
            : DateSaid.One(Moment.OfYear(third), at + 5) with { Doubt = DateDoubts.DayOrMonth };
    }

    private static DateSaid? Month(TokenText text, int at, int month, int year) =>
        text[at].Length <= 2 && text[at + 2].Length == 4 && year > 0 && month is >= 1 and <= 12 && !text.IsSign(at + 1, '-') && !text.IsApart(at + 1) && !text.IsApart(at + 2)
            ? DateSaid.One(Moment.OfMonth(year, month), at + 3)
            : null;
}

using EditionRegister.Domain.Reading.Text;

namespace EditionRegister.Domain.Reading.Dates;

/// <summary>Seasons with their year: spring 2024, fall/winter 1979, winter 1994/95, 1926, summer.</summary>
internal static class Seasons
{
    private const int Winter = 24;

    public static DateSaid? At(TokenText text, int at)
    {
        if (text.Figure(at) is > 0 and var before && text[at].Length == 4)
        {
            var name = text.IsSign(at + 1, ',') ? at + 2 : at + 1;

            return MonthNames.Season(text, name) is { } behind && YearAt(text, name + 1) is null ? DateSaid.One(Moment.OfSeason(before, behind), name + 1) : null;
        }

        if (MonthNames.Season(text, at) is not { } first)
        {
            return null;
        }

        var next = text.AfterJoin(at + 1) ?? (text.Is(at + 1, DateWords.And) ? at + 2 : at + 1);

        return next > at + 1 && MonthNames.Season(text, next) is { } second && YearAt(text, next + 1) is { } shared ? Together(text, first, second, shared)
            : YearAt(text, at + 1) is { } year ? DateSaid.One(Moment.OfSeason(year.Year, first), AfterWinter(text, first, year))
            : null;
    }

    private static DateSaid Together(TokenText text, int first, int second, (int Year, int Next) year)
    {
        var begin = second < first ? year.Year - 1 : year.Year;

        return begin < 1 ? DateSaid.One(Moment.OfSeason(year.Year, second), year.Next)
            : DateSaid.Span(Moment.OfSeason(begin, first), Moment.OfSeason(year.Year, second), AfterWinter(text, second, year));
    }

    // Winter 1994/95 is the one that begins in 1994.
    private static int AfterWinter(TokenText text, int season, (int Year, int Next) year) =>
        season == Winter && text.IsAnySign(year.Next, "-/") && text.Figure(year.Next + 1) is { } next && (next == year.Year + 1 || next == (year.Year + 1) % 100) ? year.Next + 2 : year.Next;

    private static (int Year, int Next)? YearAt(TokenText text, int at)
    {
        at = text.IsSign(at, ',') ? at + 1 : at;
        at = text.Word(at) is "of" or "de" or "del" ? at + 1 : at;

        return text.Figure(at) is > 0 and var year && text[at].Length == 4 ? (year, at + 1) : null;
    }
}

using EditionRegister.Domain.Reading.Text;

namespace EditionRegister.Domain.Reading.Dates;

/// <summary>Days and months with their names: 17 February 1877, August 26, 1865, July - August 1966, 1932, December, 28 Jan 86.</summary>
internal static class MonthDates
{
    public static DateSaid? At(TokenText text, int at) => YearFirst(text, at) ?? (MonthDay.At(text, at) is { } first ? WithYear(text, first) : null);

    /// <summary>A day of the calendar; its month with a doubt where there is no such day, its year where there is no such month.</summary>
    public static DateSaid? Day(int year, int month, int day, int next) =>
        year < 1 ? null
        : Moment.IsDay(year, month, day) ? DateSaid.One(Moment.OfDay(year, month, day), next)
        : DateSaid.One(month is >= 1 and <= 12 ? Moment.OfMonth(year, month) : Moment.OfYear(year), next) with { Doubt = DateDoubts.NoSuchDay };

    private static DateSaid? WithYear(TokenText text, MonthDay first)
    {
        if (YearOf(text, first) is { } year)
        {
            return Of(first, year);
        }

        // July - August 1966, May 22 and September 5, 1999: the year behind the second goes for both.
        return (text.AfterJoin(first.Next) ?? (text.Is(first.Next, DateWords.And) || text.IsSign(first.Next, '&') ? first.Next + 1 : null)) is { } join
            && MonthDay.At(text, join) is { } second && YearOf(text, second) is { } shared
                ? Together(first, second, shared)
                : null;
    }

    private static DateSaid? Together(MonthDay first, MonthDay second, YearRead year)
    {
        // December - January 1950 begins in 1949.
        var begin = second.Month < first.Month ? year with { Year = Years.Shifted(year.Year, -1) } : year;

        return Of(first, begin) is { } from && Of(second, year) is { } to ? DateSaid.Span(from.From, to.To, to.Next) with { Doubt = from.Doubt ?? to.Doubt } : null;
    }

    private static DateSaid? Of(MonthDay date, YearRead year)
    {
        var said = date.Day is not { } day ? DateSaid.One(Moment.OfMonth(year.Year, date.Month), year.Next)
            : Day(year.Year, date.Month, day, year.Next) is not { } first ? default
            : date.LastDay is { } last && last > day && Day(year.Year, date.Month, last, year.Next) is { } to ? DateSaid.Span(first.From, to.To, year.Next) with { Doubt = first.Doubt ?? to.Doubt }
            : first;

        return said.From is null ? null : year.IsShort ? said.Doubted() with { Doubt = DateDoubts.NoCentury } : said;
    }

    private static YearRead? YearOf(TokenText text, MonthDay date)
    {
        var at = text.IsAnySign(date.Next, ",.-/") ? date.Next + 1 : date.Next;
        at = text.Word(at) is "of" or "de" or "del" or "di" ? at + 1 : at;

        if (text.Figure(at) is > 0 and var year && text[at].Length == 4)
        {
            return new YearRead(year, IsShort: false, at + 1);
        }

        // The 76 of May 76 is no day; the 12 of May 12 may be.
        return text.IsSign(at, '\'') && ShortAt(text, at + 1) is { } marked ? new YearRead(marked, IsShort: true, at + 2)
            : ShortAt(text, at) is { } value && (date.Day is not null || value - DateConventions.CenturyOfTwoFigures > 31) ? new YearRead(value, IsShort: true, at + 1)
            : null;
    }

    private static int? ShortAt(TokenText text, int at) => text.Figure(at) is { } figure && text[at].Length == 2 ? DateConventions.CenturyOfTwoFigures + figure : null;

    /// <summary>1932, December; 1995 (February); 1916, November 28: unless the month has a year of its own.</summary>
    private static DateSaid? YearFirst(TokenText text, int at)
    {
        if (text.Figure(at) is not (> 0 and var year) || text[at].Length != 4)
        {
            return null;
        }

        var bracket = text.IsSign(at + 1, '(');
        var name = text.IsAnySign(at + 1, ",(") ? at + 2 : at + 1;

        if (MonthNames.Month(text, name) is null || MonthDay.At(text, name) is not { } date || YearOf(text, date) is not null || (bracket && !text.IsSign(date.Next, ')')))
        {
            return null;
        }

        return Of(date, new YearRead(year, IsShort: false, bracket ? date.Next + 1 : date.Next));
    }
}

/// <summary>A year met behind a month; a short one has two figures, and its century is only a convention.</summary>
internal readonly record struct YearRead(int Year, bool IsShort, int Next);

using System.Globalization;
using EditionRegister.Domain.Reading.Text;

namespace EditionRegister.Domain.Reading.Dates;

/// <summary>Days, months and seasons: 17 February 1877, August 26, 1865, 3/13/1929, October 1962, spring 2024.</summary>
internal static class CalendarDates
{
    private static readonly Dictionary<string, int> Months = Named();

    private static readonly Dictionary<string, int> Seasons = new(StringComparer.Ordinal)
    {
        ["spring"] = 21, ["summer"] = 22, ["autumn"] = 23, ["fall"] = 23, ["winter"] = 24,
        ["printemps"] = 21, ["ete"] = 22, ["automne"] = 23, ["hiver"] = 24, ["fruhling"] = 21, ["fruhjahr"] = 21, ["sommer"] = 22, ["herbst"] = 23,
        ["primavera"] = 21, ["estate"] = 22, ["autunno"] = 23, ["inverno"] = 24,
    };

    public static DateSpanRead? At(TokenText text, int at) => Iso(text, at) ?? Numeric(text, at) ?? DayFirst(text, at) ?? MonthFirst(text, at) ?? Season(text, at);

    public static bool IsMonth(TokenText text, int at) => MonthAt(text, at) > 0;

    private static DateSpanRead? Iso(TokenText text, int at) =>
        text.IsDigits(at) && text[at].Length == 4 && text.IsSign(at + 1, '-') && text.IsDigits(at + 2) && text[at + 2].Length == 2 && !text.IsApart(at + 1) && !text.IsApart(at + 2)
        && text.IsSign(at + 3, '-') && text.IsDigits(at + 4) && text[at + 4].Length == 2 && !text.IsApart(at + 3)
            ? Day(text.Figure(at)!.Value, text.Figure(at + 2)!.Value, text.Figure(at + 4)!.Value, at + 5)
            : null;

    /// <summary>3/13/1929 is one day; 9/10/2005 is a year, since nobody can say which is the month; 10/1917 is a month.</summary>
    private static DateSpanRead? Numeric(TokenText text, int at)
    {
        if (text.Figure(at) is not { } first || text[at].Length > 2 || !text.IsAnySign(at + 1, "/.") || text.Figure(at + 2) is not { } second)
        {
            return null;
        }

        if (text[at + 2].Length == 4 && text.IsSign(at + 1, '/') && first is >= 1 and <= 12)
        {
            return Month(second, first, at + 3);
        }

        if (text[at + 2].Length > 2 || !text.IsAnySign(at + 3, "/.") || text.Figure(at + 4) is not { } year || text[at + 4].Length != 4)
        {
            return null;
        }

        return first > 12 ? Day(year, second, first, at + 5)
            : second > 12 || first == second ? Day(year, first, second, at + 5)
            : new DateSpanRead(year, year, Years.Iso(year), at + 5);
    }

    private static DateSpanRead? DayFirst(TokenText text, int at)
    {
        if (text.Figure(at) is not (>= 1 and <= 31 and var day) || text[at].Length > 2)
        {
            return null;
        }

        var next = text.Word(at + 1) is "st" or "nd" or "rd" or "th" || text.IsSign(at + 1, '.') ? at + 2 : at + 1;
        next = text.Word(next) is "of" or "de" ? next + 1 : next;

        if (MonthAt(text, next) is not (> 0 and var month))
        {
            return null;
        }

        next = AfterMonth(text, next);
        next = text.Word(next) is "de" ? next + 1 : next;

        // 28 Jan 86: a year in two figures is taken for the twentieth century, and marked uncertain.
        return text.Figure(next) is not { } year ? null
            : text[next].Length == 4 ? Day(year, month, day, next + 1)
            : text[next].Length == 2 && Day(1900 + year, month, day, next + 1) is { } short_ ? short_ with { Edtf = short_.Edtf + "?" }
            : null;
    }

    private static DateSpanRead? MonthFirst(TokenText text, int at)
    {
        if (MonthAt(text, at) is not (> 0 and var month))
        {
            return null;
        }

        var next = AfterMonth(text, at);

        if (text.Figure(next) is { } year && text[next].Length == 4)
        {
            return Month(year, month, next + 1);
        }

        if (text.Figure(next) is not (>= 1 and <= 31 and var day))
        {
            return null;
        }

        next = text.Word(next + 1) is "st" or "nd" or "rd" or "th" ? next + 2 : next + 1;
        next = text.IsSign(next, ',') ? next + 1 : next;

        return text.Figure(next) is { } of && text[next].Length == 4 ? Day(of, month, day, next + 1) : null;
    }

    private static DateSpanRead? Season(TokenText text, int at)
    {
        if (!Seasons.GetAlternateLookup<ReadOnlySpan<char>>().TryGetValue(text.Word(at), out var season))
        {
            return null;
        }

        var next = text.IsSign(at + 1, ',') || text.Word(at + 1) is "of" ? at + 2 : at + 1;

        return text.Figure(next) is { } year && text[next].Length == 4
            ? new DateSpanRead(year, season == 24 ? year + 1 : year, string.Create(CultureInfo.InvariantCulture, $"{Years.Iso(year)}-{season}"), next + 1)
            : null;
    }

    private static DateSpanRead? Month(int year, int month, int next) =>
        new DateSpanRead(year, year, string.Create(CultureInfo.InvariantCulture, $"{Years.Iso(year)}-{month:00}"), next);

    private static DateSpanRead? Day(int year, int month, int day, int next) =>
        year >= 1 && month is >= 1 and <= 12 && day >= 1 && day <= DateTime.DaysInMonth(year, month)
            ? new DateSpanRead(year, year, string.Create(CultureInfo.InvariantCulture, $"{Years.Iso(year)}-{month:00}-{day:00}"), next)
            : null;

    private static int AfterMonth(TokenText text, int at) => text.IsAnySign(at + 1, ".,") ? at + 2 : at + 1;

    private static int MonthAt(TokenText text, int at) => Months.GetAlternateLookup<ReadOnlySpan<char>>().TryGetValue(text.Word(at), out var month) ? month : 0;

    private static Dictionary<string, int> Named()
    {
        string[] names =
        [
            "january jan janvier januar gennaio enero", "february feb fevrier februar febbraio febrero", "march mar mars marz marzo", "april apr avril aprile abril",
            "may mai maggio mayo", "june jun juin juni giugno junio", "july jul juillet juli luglio julio", "august aug aout agosto",
            "september sep sept septembre settembre septiembre", "october oct octobre oktober okt ottobre octubre",
            "november nov novembre noviembre novermber", "december dec decembre dezember dez dicembre diciembre",
        ];

        return names.SelectMany((words, month) => words.Split(' ').Select(word => (word, month: month + 1))).ToDictionary(one => one.word, one => one.month, StringComparer.Ordinal);
    }
}

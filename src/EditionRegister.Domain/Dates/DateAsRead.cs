using System.Globalization;

namespace EditionRegister.Domain.Dates;

/// <summary>A date that was written in words, as the register understood it: the same date in plain words, and the years or days it can mean.</summary>
internal static class DateAsRead
{
    public static string Of(RecordedDate date)
    {
        var plain = DateInWords.Of(new RecordedDate(date.ReadAs, null, null));
        var span = Span(date);

        return span is null ? plain == "XXXX" ? "no date" : plain : plain == span ? plain : $"{plain}: {span}";
    }

    private static string? Span(RecordedDate date) => (date.Earliest, date.Latest) switch
    {
        (null, null) => null,
        ({ } from, null) => $"{Shown(from, isStart: true)} or later",
        (null, { } to) => $"{Shown(to, isStart: false)} or before",
        ({ } from, { } to) when from == to => Day(from),
        ({ } from, { } to) when IsFirstOfYear(from) && IsLastOfYear(to) => from.Year == to.Year ? Year(from) : $"{Year(from)} to {Year(to)}",
        ({ } from, { } to) => $"{Day(from)} to {Day(to)}",
    };

    private static string Shown(DateOnly day, bool isStart) => (isStart ? IsFirstOfYear(day) : IsLastOfYear(day)) ? Year(day) : Day(day);

    private static bool IsFirstOfYear(DateOnly day) => day is { Month: 1, Day: 1 };

    private static bool IsLastOfYear(DateOnly day) => day is { Month: 12, Day: 31 };

    private static string Year(DateOnly day) => day.Year.ToString(CultureInfo.InvariantCulture);

    private static string Day(DateOnly day) => DateInWords.Of(RecordedDate.On(day));
}

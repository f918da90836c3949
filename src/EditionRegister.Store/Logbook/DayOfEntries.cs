using System.Globalization;
using EditionRegister.Domain;
using EditionRegister.Store.Sqlite;
using Microsoft.Data.Sqlite;

namespace EditionRegister.Store.Logbook;

/// <summary>An entry of the logbook by its number, and when it was recorded, UTC, ISO 8601.</summary>
public sealed record RecordedEntry(long N, string At);

/// <summary>
/// On which day entries were made, where the register is kept. The order of the entries goes before their times: a day ends where the first entry of a
/// later one begins, whatever a clock that was set wrongly said in between.
/// </summary>
internal sealed class DayOfEntries(TimeZoneInfo zone)
{
    /// <summary>The last entry made by the end of a day.</summary>
    /// <exception cref="RefusedException">day-before-register, day-not-over.</exception>
    public RecordedEntry LastOn(SqliteConnection connection, DateOnly day, DateOnly today)
    {
        if (day > today)
        {
            throw PastRefusals.NotOver(day, today);
        }

        var next = connection.Number("SELECT coalesce(min(n), 0) FROM logbook WHERE at >= @1", EndOf(day));

        if (next == 1)
        {
            throw PastRefusals.BeforeRegister(day, DayOf(connection.Text("SELECT at FROM logbook WHERE n = 1")) ?? today);
        }

        var last = next == 0 ? connection.Number("SELECT coalesce(max(n), 0) FROM logbook") : next - 1;

        return new RecordedEntry(last, connection.Text("SELECT at FROM logbook WHERE n = @1", last) ?? "");
    }

    /// <summary>The day of a time as entries bear it; null for what is no time.</summary>
    public DateOnly? DayOf(string? at) =>
        DateTimeOffset.TryParse(at, CultureInfo.InvariantCulture, DateTimeStyles.AssumeUniversal, out var time)
            ? DateOnly.FromDateTime(TimeZoneInfo.ConvertTime(time, zone).DateTime)
            : null;

    /// <summary>The first moment that is not of the day any more, as entries bear it.</summary>
    private string EndOf(DateOnly day)
    {
        var midnight = day.AddDays(1).ToDateTime(TimeOnly.MinValue);

        // Where clocks go forward at midnight there is none; the day then ends at one.
        var end = zone.IsInvalidTime(midnight) ? midnight.AddHours(1) : midnight;

        return TimeZoneInfo.ConvertTimeToUtc(end, zone).ToString("yyyy-MM-dd'T'HH:mm:ss.fff'Z'", CultureInfo.InvariantCulture);
    }
}

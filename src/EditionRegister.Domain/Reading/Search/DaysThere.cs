using EditionRegister.Domain.Dates;

namespace EditionRegister.Domain.Reading.Search;

/// <summary>The days that a date on record may mean, counted through; open ends are the least and the greatest number.</summary>
public readonly record struct DaysThere(int From, int To)
{
    /// <summary>Null where nothing is known of it. What was recorded as written, before dates in words were read, is read now.</summary>
    public static DaysThere? Of(RecordedDate date)
    {
        ArgumentNullException.ThrowIfNull(date);
        var read = date is { EarliestText: null, LatestText: null, Text: not null } ? RecordedDate.Read(date.Text) : date;

        return (read.Earliest ?? read.Latest) is null ? null : new(read.Earliest?.DayNumber ?? int.MinValue, read.Latest?.DayNumber ?? int.MaxValue);
    }
}

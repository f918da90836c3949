using System.Globalization;
using EditionRegister.Domain.Dates;

namespace EditionRegister.Domain.Reading.Search;

/// <summary>Days that are asked for, from the first to the last; null is open. What may lie in them is met.</summary>
public sealed record SoughtDates(DateOnly? Earliest, DateOnly? Latest)
{
    /// <summary>Whether a date may lie in it.</summary>
    public bool Meets(in DaysThere there) => there.From <= (Latest?.DayNumber ?? int.MaxValue) && (Earliest?.DayNumber ?? int.MinValue) <= there.To;

    /// <summary>The same; a date of which nothing is known does not.</summary>
    public bool Meets(RecordedDate date) => DaysThere.Of(date) is { } there && Meets(there);

    /// <summary>the year 2019, 2014 to 2024, March 2024, up to 1950.</summary>
    public override string ToString() =>
        (Earliest, Latest) switch
        {
            ({ } from, { } to) when from == to => Iso(from),
            ({ } from, { } to) when IsYears(from, to) => from.Year == to.Year ? $"the year {Year(from)}" : $"{Year(from)} to {Year(to)}",
            ({ } from, { } to) when IsMonths(from, to) => from.Year == to.Year && from.Month == to.Month ? Month(from) : $"{Month(from)} to {Month(to)}",
            ({ } from, { } to) => $"{Iso(from)} to {Iso(to)}",
            (null, { } to) => $"up to {(to is { Month: 12, Day: 31 } ? Year(to) : Iso(to))}",
            ({ } from, null) => $"{(from is { Month: 1, Day: 1 } ? Year(from) : Iso(from))} or later",
            _ => "",
        };

    private static bool IsYears(DateOnly from, DateOnly to) => from is { Month: 1, Day: 1 } && to is { Month: 12, Day: 31 };

    private static bool IsMonths(DateOnly from, DateOnly to) => from.Day == 1 && to.Day == DateTime.DaysInMonth(to.Year, to.Month);

    private static string Year(DateOnly day) => day.Year.ToString(CultureInfo.InvariantCulture);

    private static string Month(DateOnly day) => day.ToString("MMMM yyyy", CultureInfo.InvariantCulture);

    private static string Iso(DateOnly day) => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
}

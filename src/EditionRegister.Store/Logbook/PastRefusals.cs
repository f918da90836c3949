using System.Globalization;
using EditionRegister.Domain;

namespace EditionRegister.Store.Logbook;

/// <summary>Days on which there is no register to look at.</summary>
public static class PastRefusals
{
    public static RefusedException BeforeRegister(DateOnly day, DateOnly first) => new(
        "day-before-register",
        $"On {Iso(day)} there was no register yet: its first entry was made on {Iso(first)}. Nothing was changed. Name that day or a later one; what was before it stands in what was recorded since.");

    public static RefusedException NotOver(DateOnly day, DateOnly today) => new(
        "day-not-over",
        $"{Iso(day)} is not here yet: today is {Iso(today)}. Nothing was changed. Name today or a day before it.");

    private static string Iso(DateOnly day) => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
}

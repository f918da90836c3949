using EditionRegister.Domain.Dates;
using EditionRegister.Tui.Asking;

namespace EditionRegister.Tui.Logbook;

/// <summary>A day to look from, to or at: one that has a first and a last day.</summary>
internal static class DayField
{
    public static Field Of(string label, string given = "", bool isNeeded = false) => new(label, given)
    {
        IsNeeded = isNeeded,
        Form = "a day, a month or a year: 2026-03-01, 2026-03 or 2026",
        Wrong = typed => RecordedDate.Read(typed) is { Earliest: not null, Latest: not null } ? null : $"“{typed}” names no day to look at: write 2026-03-01, 2026-03 or 2026.",
    };
}

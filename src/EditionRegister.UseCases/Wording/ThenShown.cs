using System.Globalization;
using EditionRegister.Domain.Inventory;
using EditionRegister.UseCases.LookingBack;

namespace EditionRegister.UseCases.Wording;

/// <summary>What is said beside a register as it stood, and beside a schedule, alike by commands and rooms.</summary>
public static class ThenShown
{
    /// <summary>Only what bears a date can be told anew of a day that is past.</summary>
    public const string Undated = "Printing, moves and sales bear dates and are compared; numbers, titles and prices bear none and are shown as they were recorded then.";

    public const string NothingNew = "Nothing recorded since tells anything else of that day.";

    public const string NowKnown = "Known now of that day:";

    public const string MindSchedule = "A schedule values nothing and insures nothing: it lists agreed values and asking prices as they are recorded. What is covered, and for how much, is for the insurer to say, and what a sheet is worth for a licensed valuer.";

    /// <summary>As the register stood at the end of 2026-03-31, after entry 41.</summary>
    public static string Heading(RegisterThen then) =>
        $"As the register stood at the end of {Iso(then.Day)}, after entry {Counted.Figure(then.Last.N)} of its logbook. To be read only.";

    /// <summary>The sheets of which then and now tell different things, as rows.</summary>
    public static ShownTable Differences(IReadOnlyList<KnownDifference> differences) => new(
        NowKnown,
        [new("code"), new("number"), new("title"), new("as recorded then"), new("as known now"), new("recorded")],
        [.. differences.Select(one => (string[])[one.Code, one.Number, one.Title, Was(one), Is(one), DayOf(one.Recorded)])]);

    public static string Was(KnownDifference difference) => difference.Then ?? "not on record";

    public static string Is(KnownDifference difference) => difference.Now ?? "no longer on record, or not printed yet";

    /// <summary>The day of a time as the logbook bears it.</summary>
    public static string DayOf(string? at) => at is { Length: >= 10 } ? at[..10] : "";

    /// <summary>3 sheets: 540.00 EUR; 1 sheet without a value.</summary>
    public static string Sums(InsuranceSchedule schedule)
    {
        string[] sums =
        [
            .. schedule.Sums.Select(sum => $"{PricesShown.Show((long)Math.Min(sum.MinorUnits, long.MaxValue), sum.Currency)} for {Counted.Sheets(sum.Sheets)}"),
            .. schedule.WithoutValue > 0 ? [$"no value on record for {Counted.Sheets(schedule.WithoutValue)}"] : (string[])[],
        ];

        return $"{Counted.Sheets(schedule.Lines.Count)}{(sums.Length > 0 ? $": {string.Join("; ", sums)}" : "")}.";
    }

    public static string Iso(DateOnly day) => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
}

using EditionRegister.Domain.Dates;
using EditionRegister.Tui.Asking;
using EditionRegister.Tui.Hall;

namespace EditionRegister.Tui.PlanChest;

/// <summary>Asks for a day, and opens an edition as it stood when that day ended.</summary>
internal static class AsOfForm
{
    private const string Day = "Day";

    public static Form Of(Desk desk, EditionSeen seen) => new($"{Called.Edition(seen.Work, seen.Edition)} as it stood", [
        new Field(Day) { IsNeeded = true, Form = "one day: 2026-03-31", Wrong = Wrong },
    ], form => OpenAsync(desk, seen.Edition.Id, DayOf(form[Day]!)!.Value))
    {
        Name = "As it stood on a day",
        About = ["Shows what the register said when that day ended, and beside it what is known of that day now. Nothing can be changed there."],
    };

    private static async Task<Saved> OpenAsync(Desk desk, long edition, DateOnly day)
    {
        AsOfPage page = new(desk, edition, day);

        // Read before it opens, so that a day on which there was no register is said where it was typed.
        await page.RefreshAsync();

        return new Saved("", page);
    }

    private static DateOnly? DayOf(string typed) => RecordedDate.Read(typed) is { Earliest: { } first, Latest: { } last } && first == last ? first : null;

    private static string? Wrong(string typed) => DayOf(typed) is null ? $"“{typed}” is not one day: write 2026-03-31." : null;
}

using EditionRegister.Domain.Dates;
using EditionRegister.Tui.Asking;
using EditionRegister.Tui.Hall;
using EditionRegister.Tui.Pages;

namespace EditionRegister.Tui.PlanChest;

/// <summary>Says what closing an edition means before it is done.</summary>
internal static class ClosingEdition
{
    private const string On = "Closed on";

    public static Question Asked(Desk desk, EditionSeen seen) => new($"Close {seen.CalledEdition}?", [
        new Answer("y", "close it today", () => TodayAsync(desk, seen.Edition.Id)),
        new Answer("d", "it was closed on another day", () => Task.FromResult<Opening?>(OnAnotherDay(desk, seen))),
        new Answer("n", "leave it as it is", () => Task.FromResult<Opening?>(null)),
    ])
    {
        Shown =
        [
            "A closed edition stays as it is: no number is given, taken back or",
            "stated anew, and its size is not mended. Sheets go on moving and",
            "being sold. Every number must have its sheet or its fate, and of",
            "every block or plate it must be said what became of it. Closing is",
            "not taken back.",
            .. seen.Map.Totals.Where(total => total.Label == "accounted for").Select(total => (Line)$"Accounted for now: {total.Value}."),
        ],
    };

    private static Form OnAnotherDay(Desk desk, EditionSeen seen) => new($"Close {seen.CalledEdition}", [
        NumberFateForm.Required(Fields.Date(On)),
    ], async form => new Saved(await DoAsync(desk, seen.Edition.Id, RecordedDate.Read(form[On]))))
    {
        Name = "Close an edition",
    };

    private static async Task<Opening?> TodayAsync(Desk desk, long edition)
    {
        desk.Say(await DoAsync(desk, edition, null), Tone.Good);

        return null;
    }

    private static Task<string> DoAsync(Desk desk, long edition, RecordedDate? on) => desk.Store.Do(register =>
    {
        register.CloseEdition.Run(edition, on);
        var (work, closed) = register.LookAround.Edition(edition);

        return EditionSaid.Closed(work, closed);
    });
}

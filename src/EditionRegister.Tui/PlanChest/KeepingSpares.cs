using EditionRegister.Tui.Asking;
using EditionRegister.Tui.Hall;
using EditionRegister.Tui.Pages;
using EditionRegister.UseCases.Choosing;

namespace EditionRegister.Tui.PlanChest;

/// <summary>Only kept sheets are numbered, so a spare that is to take a number is kept first: a deed of its own, and said so.</summary>
internal static class KeepingSpares
{
    public static Question Asked(Desk desk, EditionSeen seen, IReadOnlyList<TraySlot> spares, Func<Form> next) => new($"{(spares.Count == 1 ? "A spare is" : "Spares are")} to get a number: {SheetsCalled.Of(seen.Work, spares)}. Keep {(spares.Count == 1 ? "it" : "them")} first?", [
        new Answer("y", "keep, then give the number", async () =>
        {
            ImpressionChoice choice = new() { Sheets = string.Join(", ", spares.Select(slot => slot.Code)) };
            desk.Say(await SortAsync(desk, choice, "kept"), Tone.Good);
            desk.Undo = new Undoing("keeping spares", () => SortAsync(desk, choice, "spare"));

            return next();
        }),
        new Answer("n", "leave it as it is", () => Task.FromResult<Opening?>(null)),
    ]);

    private static Task<string> SortAsync(Desk desk, ImpressionChoice choice, string standing) =>
        desk.Store.Do(register => EditionSaid.Sorted(register.SortPulls.Run(choice, standing), standing));
}

using EditionRegister.Tui.Asking;
using EditionRegister.Tui.Hall;
using EditionRegister.Tui.Pages;
using EditionRegister.Tui.Sheets;
using EditionRegister.UseCases.Choosing;

namespace EditionRegister.Tui.PlanChest;

/// <summary>Takes numbers back from sheets, while they are unsigned and here.</summary>
internal static class TakeNumbersBack
{
    public static Question Asked(Desk desk, ChosenSheets chosen) => new($"Take back the number of {chosen.Called}?", [
        new Answer("y", "take it back: the number is open again, and the sheet is kept without one", async () =>
        {
            desk.Say(await DoAsync(desk, chosen.Choice), Tone.Good);
            return null;
        }),
        new Answer("n", "leave it as it is", () => Task.FromResult<Opening?>(null)),
    ]);

    /// <summary>Answers in a sentence.</summary>
    public static Task<string> DoAsync(Desk desk, ImpressionChoice choice) => desk.Store.Do(register => EditionSaid.NumbersTakenBack(register.GiveNumbers.TakeBack(choice)));
}

using EditionRegister.Domain.Shows;
using EditionRegister.Tui.Asking;
using EditionRegister.Tui.Hall;
using EditionRegister.Tui.Pages;

namespace EditionRegister.Tui.Sheets;

/// <summary>Which show some sheets are listed for.</summary>
internal static class ShowChoice
{
    public static async Task<Opening?> OfAsync(Desk desk, SheetsAtHand sheets)
    {
        var shows = await desk.Store.Do(register => register.LookAround.Shows());

        if (shows.Count == 0)
        {
            desk.Say("No show is recorded yet. Make one first: 6 goes to the Shows, and n makes a new one there.", Tone.Warning);

            return null;
        }

        return new Choice(
            $"List {sheets.Called} for",
            [.. shows.Reverse().Select(show => new Choosable(null, ShowsShown.Of(show), () => AddAsync(desk, sheets, show)))]);
    }

    private static async Task<Opening?> AddAsync(Desk desk, SheetsAtHand sheets, Show show)
    {
        desk.Say(
            await desk.Store.Do(register =>
            {
                var count = register.AddToShow.Run(show.Id, sheets.ByCode);

                return ShowsShown.Listed(count, show.ShownName, register.LookAround.Show(show.Id).Listed.Count);
            }),
            Tone.Good);
        desk.Undo = new Undoing("the listing", () => desk.Store.Do(register =>
        {
            var count = register.RemoveFromShow.Run(show.Id, sheets.ByCode);

            return ShowsShown.TakenOff(count, show.ShownName, register.LookAround.Show(show.Id).Listed.Count);
        }));

        return null;
    }
}

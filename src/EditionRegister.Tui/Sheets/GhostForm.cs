using EditionRegister.Domain.Impressions;
using EditionRegister.Tui.Asking;
using EditionRegister.Tui.Hall;
using EditionRegister.Tui.Pages;

namespace EditionRegister.Tui.Sheets;

/// <summary>Asks which print a sheet is the ghost of.</summary>
internal static class GhostForm
{
    private const string Of1 = "Ghost of";
    private const string Date = "Pulled on";
    private const string Note = "Note";

    /// <exception cref="Domain.RefusedException">one-sheet-only.</exception>
    public static Opening Of(Desk desk, SheetsAtHand sheets)
    {
        var (work, ghost) = sheets.IsOne ? sheets.First : throw ImpressionRefusals.OneSheetOnly("What a sheet is the ghost of");

        return Ghosts.Of(ghost) is { } link ? TakenBack(desk, ghost.ShownCode, work.Impressions.FirstOrDefault(sheet => sheet.Id == link.Other)?.ShownCode ?? "another sheet") : new Form($"{sheets.Called} as a ghost", [
            new Field(Of1)
            {
                IsNeeded = true,
                Form = "the code of the sheet pulled before it",
                Known = typed => Fields.Matching([.. work.Impressions.Where(sheet => sheet.Id != ghost.Id).Select(sheet => sheet.ShownCode)], typed),
            },
            Fields.Date(Date),
            new Field(Note),
        ], form => SaveAsync(desk, ghost.ShownCode, form))
        {
            Name = "ghost",
            OwnEachTime = [Of1, Note],
            About = [sheets.About, "A ghost is pulled after its print from the same plate, without inking it anew: a unique print of its own."],
        };
    }

    private static async Task<Saved> SaveAsync(Desk desk, string ghost, Form form)
    {
        var print = await desk.Store.Do(register =>
        {
            register.LinkGhost.Run(ghost, form[Of1]!, Fields.DateOf(form[Date]), form[Note]);

            return register.LookAround.Impression(form[Of1]!).Impression.ShownCode;
        });

        return new Saved(SheetSaid.Ghost(ghost, print)) { Undo = new Undoing("the ghost", () => BackAsync(desk, ghost)) };
    }

    private static Question TakenBack(Desk desk, string ghost, string print) => new($"{ghost} is the ghost of {print}. Was that a mistake?", [
        new Answer("y", "take it back", async () =>
        {
            desk.Say(await BackAsync(desk, ghost), Tone.Good);

            return null;
        }),
        new Answer("n", "leave it as it is", () => Task.FromResult<Opening?>(null)),
    ]);

    private static Task<string> BackAsync(Desk desk, string ghost) => desk.Store.Do(register =>
    {
        register.LinkGhost.TakeBack(ghost);

        return SheetSaid.Ghost(ghost, null);
    });
}

using EditionRegister.Domain.Impressions;
using EditionRegister.Tui.Asking;
using EditionRegister.Tui.Hall;
using EditionRegister.UseCases.Impressions;

namespace EditionRegister.Tui.Sheets;

/// <summary>Asks to whom copies are dedicated.</summary>
internal static class DedicateForm
{
    private const string Words = "Dedication";

    public static Form Of(Desk desk, SheetsAtHand sheets) => new($"Dedicate {sheets.Called}", [
        new Field(Words, sheets.Same(sheet => sheet.Dedication).Value ?? "")
        {
            Form = "as it stands on the sheet: for Joost, with thanks; empty takes it back",
            Wrong = typed => typed.Trim().Length > SheetWords.Longest ? "It has at most 120 characters, since it stands on papers." : null,
        },
    ], form => SaveAsync(desk, sheets, form))
    {
        Name = "dedication",
        OwnEachTime = [Words],
        About = [sheets.About, "On papers for others, names of the address book are said by their policy."],
    };

    private static async Task<Saved> SaveAsync(Desk desk, SheetsAtHand sheets, Form form)
    {
        var (said, before) = (form[Words], sheets.Same(sheet => sheet.Dedication));

        if (before.IsSame && before.Value == said)
        {
            return new Saved("Nothing was changed: that is recorded already.");
        }

        var (count, after) = await desk.Store.Do(register =>
        {
            var done = register.DedicateSheets.Run(sheets.ByCode, said, sheets.AsSeen);

            return (done, new SheetsAsSeen(register.LookAround.Chosen(sheets.ByCode).SelectMany(chosen => chosen.Sheets)));
        });

        return new Saved(SheetSaid.Dedicated(count, said))
        {
            Undo = !before.IsSame ? null : new Undoing("dedication", () => desk.Store.Do(register => SheetSaid.Dedicated(register.DedicateSheets.Run(sheets.ByCode, before.Value, after), before.Value))),
        };
    }
}

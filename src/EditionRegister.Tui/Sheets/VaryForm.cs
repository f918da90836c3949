using EditionRegister.Domain.Impressions;
using EditionRegister.Tui.Asking;
using EditionRegister.Tui.Hall;
using EditionRegister.UseCases.Impressions;

namespace EditionRegister.Tui.Sheets;

/// <summary>Asks how sheets differ from the others of a varied edition.</summary>
internal static class VaryForm
{
    private const string Words = "How it differs";

    public static Form Of(Desk desk, SheetsAtHand sheets) => new($"How {sheets.Called} differs", [
        new Field(Words, sheets.Same(sheet => sheet.Variant).Value ?? "")
        {
            Form = "the ink, the paper, the wiping: wiped in ochre; empty takes it back",
            Wrong = typed => typed.Trim().Length > SheetWords.Longest ? "It has at most 120 characters, since it stands on papers." : null,
        },
    ], form => SaveAsync(desk, sheets, form))
    {
        Name = "variant",
        OwnEachTime = [Words],
        About = [sheets.About, "In a varied edition each impression is disclosed as what it is. Two may be alike."],
    };

    private static async Task<Saved> SaveAsync(Desk desk, SheetsAtHand sheets, Form form)
    {
        var (said, before) = (form[Words], sheets.Same(sheet => sheet.Variant));

        if (before.IsSame && before.Value == said)
        {
            return new Saved("Nothing was changed: that is recorded already.");
        }

        var (count, after) = await desk.Store.Do(register =>
        {
            var done = register.VarySheets.Run(sheets.ByCode, said, sheets.AsSeen);

            return (done, new SheetsAsSeen(register.LookAround.Chosen(sheets.ByCode).SelectMany(chosen => chosen.Sheets)));
        });

        return new Saved(SheetSaid.Varied(count, said))
        {
            Undo = !before.IsSame ? null : new Undoing("variant", () => desk.Store.Do(register => SheetSaid.Varied(register.VarySheets.Run(sheets.ByCode, before.Value, after), before.Value))),
        };
    }
}

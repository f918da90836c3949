using EditionRegister.Tui.Asking;
using EditionRegister.Tui.Hall;

namespace EditionRegister.Tui.Sheets;

/// <summary>What is asked when owners collect their sheets.</summary>
internal static class HandOverForm
{
    private const string Date = "Date";
    private const string Note = "Note";

    public static Form Of(Desk desk, SheetsAtHand sheets) => new(
        $"Hand over {sheets.Called}",
        [Fields.Today(Date, desk.Today), new Field(Note) { Form = "who fetched them, if not the owner; anything else" }],
        form => SaveAsync(desk, sheets, form))
    {
        Name = "hand over",
        About = [sheets.About],
        OwnEachTime = [Note],
    };

    private static async Task<Saved> SaveAsync(Desk desk, SheetsAtHand sheets, Form form)
    {
        var (day, note) = (DayOf.Deed(desk, form[Date]), form[Note]);
        var (count, meant) = await desk.Store.Do(register => (register.HandOver.Run(sheets.ByCode, day, note), LastStep.Of(register, sheets)));

        return new Saved(MovesSaid.HandedOver(count, day)) { Undo = LastStep.Undoing(desk, "handing over", sheets, meant, move: true, transfer: false) };
    }
}

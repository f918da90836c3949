using EditionRegister.Tui.Asking;
using EditionRegister.Tui.Hall;
using EditionRegister.UseCases.People;

namespace EditionRegister.Tui.Sheets;

/// <summary>What is asked when sheets are put away.</summary>
internal static class PutAwayForm
{
    private const string Place = "Place";
    private const string Date = "Date";
    private const string Note = "Note";

    public static Form Of(Desk desk, SheetsAtHand sheets) => new(
        $"Put away {sheets.Called}",
        [Known.Place(Place, sheets, isNeeded: true), Fields.Today(Date, desk.Today), new Field(Note) { Form = "anything else" }],
        form => NewPlace.OfferedAsync(desk, form, form[Place]!, $"put {Counted.Sheets(sheets.Count)} there", place => SaveAsync(desk, sheets, form, place)))
    {
        Name = "put away",
        About = [sheets.About],
        OwnEachTime = [Note],
    };

    private static async Task<Saved> SaveAsync(Desk desk, SheetsAtHand sheets, Form form, string place)
    {
        var day = DayOf.Deed(desk, form[Date]);
        var note = form[Note];
        var (count, path, meant) = await desk.Store.Do(register =>
        {
            var done = register.PutAway.Run(sheets.ByCode, place, day, note);
            var book = register.LookAround.Book();

            return (done, book.PathOf(Places.Find(book, place)), LastStep.Of(register, sheets));
        });

        return new Saved(SheetSaid.PutAway(count, path, day)) { Undo = LastStep.Undoing(desk, "putting away", sheets, meant, move: true, transfer: false) };
    }
}

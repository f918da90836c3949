using EditionRegister.Tui.Asking;
using EditionRegister.Tui.Hall;
using EditionRegister.UseCases.Moves;
using EditionRegister.UseCases.People;

namespace EditionRegister.Tui.Sheets;

/// <summary>What is asked when missing sheets turn up.</summary>
internal static class FindForm
{
    private const string Place = "Place";
    private const string With = "With";
    private const string Date = "Date";
    private const string Note = "Note";

    public static Form Of(Desk desk, SheetsAtHand sheets) => new(
        $"Found again: {sheets.Called}",
        [
            Known.Place(Place, sheets, isNeeded: false),
            Known.Person(With, sheets, "who has them now; empty where the maker has them, or nobody"),
            Fields.Today(Date, desk.Today),
            new Field(Note) { Form = "how they turned up" },
        ],
        form => form[Place] is { } typed
            ? NewPlace.OfferedAsync(desk, form, typed, $"put {Counted.Sheets(sheets.Count)} there", place => SaveAsync(desk, sheets, form, place))
            : SaveAsync(desk, sheets, form, null))
    {
        Name = "found again",
        About = [sheets.About],
        OwnEachTime = [Note],
    };

    private static async Task<Saved> SaveAsync(Desk desk, SheetsAtHand sheets, Form form, string? place)
    {
        var (with, day, note) = (form[With], DayOf.Deed(desk, form[Date]), form[Note]);
        var (count, where, meant) = await desk.Store.Do(register =>
        {
            var done = register.FindAgain.Run(sheets.ByCode, new SentTo(with, place), day, note);
            var book = register.LookAround.Book();

            return (done, MovesSaid.Destination(with is null ? null : Names.Of(register, with), place is null ? null : book.PathOf(Places.Find(book, place))), LastStep.Of(register, sheets));
        });

        return new Saved(MovesSaid.Found(count, where, day)) { Undo = LastStep.Undoing(desk, "that step", sheets, meant, move: true, transfer: false) };
    }
}

using EditionRegister.Domain.Chains;
using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.Works;
using EditionRegister.Tui.Asking;
using EditionRegister.Tui.Hall;
using EditionRegister.UseCases.People;

namespace EditionRegister.Tui.Sheets;

/// <summary>What is asked when sheets come back.</summary>
internal static class ReturnForm
{
    private const string From = "From";
    private const string Place = "Place";
    private const string Date = "Date";
    private const string Note = "Note";

    /// <exception cref="Domain.RefusedException">not-away, where nobody else has any of them.</exception>
    public static Form Of(Desk desk, SheetsAtHand sheets)
    {
        if (!sheets.Pairs.Any(pair => IsAway(pair.Work, pair.Sheet)))
        {
            throw ChainRefusals.NotAway(sheets.First.Sheet, WhereInWords.Of(sheets.First.Work, sheets.First.Sheet));
        }

        var holder = sheets.Same(sheet => sheet.Where?.Holder).Value;
        var before = sheets.Same(sheet => sheet.Whereabouts.LastOrDefault(link => link.To.State == "placed")?.To.Place).Value;

        return new Form(
            $"Take back {sheets.Called}",
            [
                Known.Person(From, sheets, "whoever has them; empty where that goes without saying", given: holder is { } known ? Known.NameOf(sheets.Book, known) : ""),
                Known.Place(Place, sheets, isNeeded: false, given: before is { } place ? sheets.Book.PathOf(place) : ""),
                Fields.Today(Date, desk.Today),
                new Field(Note) { Form = "anything else" },
            ],
            form => form[Place] is { } typed
                ? NewPlace.OfferedAsync(desk, form, typed, $"put {Counted.Sheets(sheets.Count)} there", put => SaveAsync(desk, sheets, form, put))
                : SaveAsync(desk, sheets, form, place: null))
        {
            Name = "take back",
            About = [sheets.About],
            OwnEachTime = [From, Note],
        };
    }

    private static bool IsAway(Work work, Impression sheet) => sheet.Where is { State: "with", Holder: { } holder } && work.Makers.All(maker => maker.Id != holder);

    private static async Task<Saved> SaveAsync(Desk desk, SheetsAtHand sheets, Form form, string? place)
    {
        var (day, from, note) = (DayOf.Deed(desk, form[Date]), form[From], form[Note]);
        var (count, name, path, meant) = await desk.Store.Do(register =>
        {
            var done = register.ReturnImpressions.Run(sheets.ByCode, from, place, day, note);
            var book = register.LookAround.Book();

            return (done, from is null ? null : book.NameOf(Persons.Find(book, from)), place is null ? null : book.PathOf(Places.Find(book, place)), LastStep.Of(register, sheets));
        });

        return new Saved(SheetSaid.Returned(count, name, path, day)) { Undo = LastStep.Undoing(desk, "the return", sheets, meant, move: true, transfer: false) };
    }
}

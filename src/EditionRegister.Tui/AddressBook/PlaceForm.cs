using EditionRegister.Domain.People;
using EditionRegister.Tui.Asking;
using EditionRegister.Tui.Hall;
using EditionRegister.Tui.Pages;
using EditionRegister.UseCases.People;
using Book = EditionRegister.Domain.People.AddressBook;

namespace EditionRegister.Tui.AddressBook;

/// <summary>What is asked of a place that is recorded, or put right.</summary>
internal static class PlaceForm
{
    private const string Inside = "Inside";
    private const string Name = "Name";
    private const string Keeper = "Kept by";
    private const string Note = "Note";

    /// <param name="desk">The desk.</param>
    /// <param name="outer">The path of the place it is likely to lie in, or null.</param>
    public static async Task<Opening?> NewAsync(Desk desk, string? outer)
    {
        var known = await desk.Store.Do(register => register.LookAround.Suggestions());

        return new Form("Record a place", [
            Fields.Known(Inside, known.Places, "the place around it, such as Studio › Plan chest; empty for none", outer ?? ""),
            new Field(Name) { IsNeeded = true, Form = "Drawer 3; or several from the outside in: Plan chest › Drawer 3" },
            Fields.Known(Keeper, known.People, "who keeps it, where that is not the studio: a name of the address book"),
            new Field(Note) { Form = "anything else" },
        ], form => RecordAsync(desk, form))
        {
            OwnEachTime = [Name, Note],
        };
    }

    public static async Task<Opening?> EditAsync(Desk desk, long id)
    {
        var (book, known) = await desk.Store.Do(register => (register.LookAround.Book(), register.LookAround.Suggestions()));
        var seen = book.Places[id];

        return new Form($"Put right: {book.PathOf(id)}", [
            new Field(Name, seen.Name ?? "") { IsNeeded = true, Form = "its own name, without the places around it" },
            Fields.Known(Inside, known.Places, "the place it lies in, with everything in it; empty where it lies in none", seen.Inside is { } inside ? book.PathOf(inside) : ""),
            Fields.Known(Keeper, known.People, "who keeps it; empty is the studio", seen.Keeper is { } keeper ? book.NameOf(keeper) : ""),
            new Field(Note, seen.Note ?? "") { Form = "anything else" },
        ], form => PutRightAsync(desk, form, seen, book))
        {
            Name = "Put a place right",
            OwnEachTime = [Name, Inside, Note],
        };
    }

    private static async Task<Saved> RecordAsync(Desk desk, Form form)
    {
        var path = form[Inside] is { } outer ? outer + Book.Inside + form[Name] : form[Name]!;
        var (id, shown, isNew) = await desk.Store.Do(register =>
        {
            var before = register.LookAround.Book();
            var made = register.RecordPlace.Run(path, form[Keeper] is { } keeper ? Persons.Find(before, keeper) : null, form[Note]);

            return (made, register.LookAround.Book().PathOf(made), !before.Places.ContainsKey(made));
        });

        return new Saved(AddressBookSaid.PlaceRecorded(id, shown, isNew));
    }

    private static async Task<Saved> PutRightAsync(Desk desk, Form form, Place seen, Book book)
    {
        PlaceCorrection correction = new() { Name = Changed(form, Name), Inside = Changed(form, Inside), Keeper = Changed(form, Keeper), Note = Changed(form, Note) };

        if (correction == new PlaceCorrection())
        {
            return new Saved("Nothing was changed.");
        }

        var now = await EditedAsync(desk, seen.Id, correction, seen.V);
        PlaceCorrection back = new() { Name = seen.Name, Inside = seen.Inside is { } inside ? book.PathOf(inside) : "", Keeper = seen.Keeper is { } keeper ? Counted.Figure(keeper) : "", Note = seen.Note ?? "" };

        return new Saved(AddressBookSaid.PlacePutRight(seen.Id, now.PathOf(seen.Id)))
        {
            Undo = new Undoing("the edit", async () => AddressBookSaid.PlacePutRight(seen.Id, (await EditedAsync(desk, seen.Id, back, now.Places[seen.Id].V)).PathOf(seen.Id))),
        };
    }

    private static Task<Book> EditedAsync(Desk desk, long id, PlaceCorrection correction, long seen) => desk.Store.Do(register =>
    {
        register.EditPlace.Run(id, correction, seen);

        return register.LookAround.Book();
    });

    private static string? Changed(Form form, string label) => form.FieldOf(label) is var field && field.Text.Trim() == field.AsGiven.Trim() ? null : field.Text.Trim();
}

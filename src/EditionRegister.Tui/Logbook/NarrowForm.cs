using EditionRegister.Domain.Dates;
using EditionRegister.Tui.Asking;
using EditionRegister.Tui.Hall;
using EditionRegister.UseCases.People;

namespace EditionRegister.Tui.Logbook;

/// <summary>What is asked of someone who looks for an entry. Nothing is written.</summary>
internal static class NarrowForm
{
    private const string From = "From";
    private const string To = "To";
    private const string Person = "Written by";
    private const string About = "About";

    public static async Task<Form> OpenAsync(Desk desk, Narrowing now, Action<Narrowing> narrow)
    {
        var book = await desk.Store.Do(register => register.LookAround.Book());

        return new Form("Look for entries", [
            DayField.Of(From, now.From.Text ?? ""),
            DayField.Of(To, now.To.Text ?? ""),
            Fields.Known(Person, [.. book.People.Values.Where(person => !person.IsErased).Select(person => person.FullName)], "whoever did it: a name, or a part of it", now.ByName ?? ""),
            new Field(About, now.About ?? "") { Form = "words of a title, a name or a place" },
        ], form => Task.FromResult(Narrowed(form, book, narrow)))
        {
            About = ["Leave empty what does not matter. Days are counted in UTC, as entries are written."],
        };
    }

    private static Saved Narrowed(Form form, Domain.People.AddressBook book, Action<Narrowing> narrow)
    {
        long? by = form[Person] is { } who ? Persons.Find(book, who) : null;
        Narrowing narrowing = new()
        {
            From = RecordedDate.Read(form[From]),
            To = RecordedDate.Read(form[To]),
            By = by,
            ByName = by is { } id ? book.NameOf(id) : null,
            About = form[About],
        };
        narrow(narrowing);

        return new Saved(narrowing == Narrowing.None ? "All entries are shown." : $"Entries {narrowing.InWords()}. Press a to see all again.");
    }
}

using EditionRegister.Domain.People;
using EditionRegister.Tui.Asking;
using EditionRegister.Tui.Hall;
using EditionRegister.Tui.Pages;
using EditionRegister.UseCases.People;
using Book = EditionRegister.Domain.People.AddressBook;

namespace EditionRegister.Tui.AddressBook;

/// <summary>Records a class of pupils: class and public name once, then one name after another. The form opens again after each.</summary>
internal static class PupilForm
{
    private const string Class = "Class";
    private const string InPublic = "In public";
    private const string Code = "Class code";
    private const string Namesake = "A namesake";
    private const string Name = "Name";

    // The most private first; the whole name of a pupil is for their own entry to say, one by one.
    private static readonly string[] Policies = ["class-code", "initials", "given", "given-and-initial", "unnamed"];

    public static async Task<Opening?> OpenAsync(Desk desk) => Of(desk, await desk.Store.Do(register => register.LookAround.Book()), "", Policies[0], last: null);

    private static Form Of(Desk desk, Book book, string inClass, string policy, Person? last) => new("Record pupils", [
        new Field(Class, inClass) { IsNeeded = true, Form = "as the school calls it, such as 8B; the codes begin with it" },
        Field.OneOf(InPublic, Policies, policy),
        new Field(Code) { Form = inClass.Length > 0 ? $"empty takes the next one, {ClassCodes.Next(book, inClass)}" : "empty takes the next one of the class, such as 8B-05" },
        Field.OneOf(Namesake, ["no", "yes"]),
        new Field(Name) { IsNeeded = true, Form = "no more of it than you need; Enter records and asks for the next pupil" },
    ], form => SaveAsync(desk, form))
    {
        About = [About(book, inClass, last)],
        OwnEachTime = [Code, Namesake, Name],
        Caution = AddressBookSaid.AboutPupils,
        At = last is null ? 0 : 4,
    };

    private static string About(Book book, string inClass, Person? last) => last is null
        ? "Say the class and how much of the names is shown in public; then type one name after another, each with Enter. Esc ends. A namesake is somebody else of a name that is here already."
        : $"{Counted.Of(ClassCodes.Of(book, inClass).Count, "pupil")} of {inClass} in the address book; the last was {last.FullName}, {last.ClassCode}. Type the next name, or Esc to end.";

    private static async Task<Saved> SaveAsync(Desk desk, Form form)
    {
        var inClass = form[Class]!;
        NewPerson pupil = new()
        {
            Name = form[Name]!,
            IsProtected = true,
            PublicName = form[InPublic],
            ClassCode = form[Code],
            IsAnother = form.IsYes(Namesake),
        };

        var (person, book) = await desk.Store.Do(register =>
        {
            var id = register.RecordPerson.Run(pupil with { ClassCode = pupil.ClassCode ?? ClassCodes.Next(register.LookAround.Book(), inClass) });
            var now = register.LookAround.Book();

            return (now.People[id], now);
        });

        return new Saved(AddressBookSaid.Recorded(person), Of(desk, book, inClass, form[InPublic]!, person));
    }
}

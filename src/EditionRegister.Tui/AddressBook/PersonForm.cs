using EditionRegister.Domain.People;
using EditionRegister.Tui.Asking;
using EditionRegister.Tui.Hall;
using EditionRegister.UseCases.People;

namespace EditionRegister.Tui.AddressBook;

/// <summary>What is asked of someone who is recorded.</summary>
internal static class PersonForm
{
    private const string Name = "Name";
    private const string What = "What";
    private const string Protected = "Pupil, or name not for all";
    private const string InPublic = "Name in public";
    private const string Wording = "Wording in public";
    private const string ClassCode = "Class code";
    private const string Contact = "Contact";
    private const string Note = "Note";

    public static Form New(Desk desk) => new("Record someone", [
        new Field(Name) { IsNeeded = true, Form = "as it is written: Mira Tolland" },
        Field.OneOf(What, ["person", "organisation"]),
        Field.YesNo(Protected, false),
        Field.OneOf(InPublic, ["as usual", .. PublicNamePolicy.Words]),
        new Field(Wording) { Form = "shown instead of the name: private collection" },
        new Field(ClassCode) { Form = "a code only the class can resolve: 8B-14" },
        new Field(Contact) { Form = "where to reach them" },
        new Field(Note),
    ], form => SaveAsync(desk, form))
    {
        OwnEachTime = [Name, ClassCode, Contact, Note],
        Caution = "Record of pupils only what the school's policy and the law where you are allow.",
    };

    private static async Task<Saved> SaveAsync(Desk desk, Form form)
    {
        NewPerson person = new()
        {
            Name = form[Name]!,
            IsOrganisation = form[What] == "organisation",
            IsProtected = form.IsYes(Protected),
            PublicName = form[InPublic] == "as usual" ? null : form[InPublic],
            Wording = form[Wording],
            ClassCode = form[ClassCode],
            Contact = form[Contact],
            Note = form[Note],
        };
        var id = await desk.Store.Do(register => register.RecordPerson.Run(person));

        return new Saved($"{person.Name} is in the address book, as person {id}.");
    }
}

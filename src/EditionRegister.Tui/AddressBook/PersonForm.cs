using EditionRegister.Domain.People;
using EditionRegister.Tui.Asking;
using EditionRegister.Tui.Hall;
using EditionRegister.UseCases;
using EditionRegister.UseCases.People;

namespace EditionRegister.Tui.AddressBook;

/// <summary>What is asked of someone who is recorded, or put right.</summary>
internal static class PersonForm
{
    private const string Name = "Name";
    private const string SortName = "Sorted as";
    private const string What = "What";
    private const string InPublic = "In public";
    private const string Wording = "In these words";
    private const string Protected = "Protected";
    private const string ClassCode = "Class code";
    private const string Contact = "Contact";
    private const string Note = "Note";
    private const string Namesake = "A namesake";

    // In the order in which they show less; the whole name last, since it is what the form's line speaks of.
    private static readonly string[] Policies = ["given", "given-and-initial", "initials", "class-code", "unnamed", "wording", "full"];

    public static Form New(Desk desk) => new("Record someone", [
        new Field(Name) { IsNeeded = true, Form = "as it is written: Mira Tolland" },
        Field.OneOf(What, ["person", "organisation"]),
        Public("", "empty is the whole name, or initials where protected; F3 for other ways"),
        new Field(Wording) { Form = "with “wording”: shown instead of the name, such as private collection" },
        Field.YesNo(Protected, false),
        new Field(ClassCode) { Form = "a code that only the class can resolve: 8B-14" },
        new Field(Contact) { Form = "where to reach them" },
        new Field(Note) { Form = "anything else" },
        Field.OneOf(Namesake, ["no", "yes"]),
    ], form => RecordAsync(desk, form))
    {
        About = ["Protected: a pupil, or anyone whose name is not for everybody."],
        OwnEachTime = [Name, Wording, ClassCode, Contact, Note, Namesake],
        Caution = AddressBookSaid.AboutPupils,
    };

    public static Form Edit(Desk desk, Person seen) => new($"Put right: {seen.FullName}", [
        new Field(Name, seen.Name ?? "") { IsNeeded = true, Form = "as it is written: Mira Tolland" },
        new Field(SortName, seen.SortName ?? "") { Form = "family name first: Tolland, Mira; left alone it follows a new name" },
        Public(seen.Policy, "how much of the name is shown in public; F3 for other ways"),
        new Field(Wording, seen.Wording ?? "") { Form = "with “wording”: shown instead of the name, such as private collection" },
        Field.YesNo(Protected, seen.IsProtected),
        new Field(ClassCode, seen.ClassCode ?? "") { Form = "a code that only the class can resolve: 8B-14" },
        new Field(Contact, seen.Contact ?? "") { Form = "where to reach them" },
        new Field(Note, seen.Note ?? "") { Form = "anything else" },
    ], form => PutRightAsync(desk, form, seen))
    {
        Name = "Put someone right",
        OwnEachTime = [Name, SortName, Wording, ClassCode, Contact, Note],
        Caution = AddressBookSaid.AboutPupils,
    };

    private static Field Public(string given, string form) => new(InPublic, given)
    {
        Form = form,
        IsNeeded = given.Length > 0,
        // Behind a whole word all the others, for going through them.
        Known = typed => [.. Policies.Where(policy => policy != typed && (Policies.Contains(typed) || policy.StartsWith(typed.Trim(), StringComparison.Ordinal)))],
        Wrong = typed => PublicNamePolicy.Words.Contains(typed) ? null : $"“{typed}” is no way to show a name in public. The ways are {string.Join(", ", PublicNamePolicy.Words)}.",
    };

    private static async Task<Saved> RecordAsync(Desk desk, Form form)
    {
        NewPerson person = new()
        {
            Name = form[Name]!,
            IsOrganisation = form[What] == "organisation",
            IsProtected = form.IsYes(Protected),
            PublicName = form[InPublic],
            Wording = form[Wording],
            ClassCode = form[ClassCode],
            Contact = form[Contact],
            Note = form[Note],
            IsAnother = form.IsYes(Namesake),
        };

        return new Saved(AddressBookSaid.Recorded(await RecordAsync(desk, person)));
    }

    /// <summary>Records someone, and answers them as they stand in the register.</summary>
    private static Task<Person> RecordAsync(Desk desk, NewPerson person) => desk.Store.Do(register =>
    {
        var id = register.RecordPerson.Run(person);

        return register.LookAround.Book().People[id];
    });

    private static async Task<Saved> PutRightAsync(Desk desk, Form form, Person seen)
    {
        PersonCorrection correction = new()
        {
            Name = Changed(form, Name),
            SortName = Changed(form, SortName),
            IsProtected = Changed(form, Protected) is { } word ? word == "yes" : null,
            PublicName = Changed(form, InPublic),
            Wording = Changed(form, Wording),
            ClassCode = Changed(form, ClassCode),
            Contact = Changed(form, Contact),
            Note = Changed(form, Note),
        };

        if (correction == new PersonCorrection())
        {
            return new Saved("Nothing was changed.");
        }

        var person = await desk.Store.Do(register => Corrected(register, seen.Id, correction, seen.V));

        return new Saved(AddressBookSaid.PutRight(person)) { Undo = new Undoing("the edit", () => BackAsync(desk, seen, person)) };
    }

    /// <summary>As it was seen before; refused where somebody has changed it since.</summary>
    private static async Task<string> BackAsync(Desk desk, Person before, Person after)
    {
        PersonCorrection back = new()
        {
            Name = before.Name,
            SortName = before.SortName ?? "",
            IsProtected = before.IsProtected,
            PublicName = before.Policy,
            Wording = before.Wording ?? "",
            ClassCode = before.ClassCode ?? "",
            Contact = before.Contact ?? "",
            Note = before.Note ?? "",
        };

        return AddressBookSaid.PutRight(await desk.Store.Do(register => Corrected(register, before.Id, back, after.V)));
    }

    private static Person Corrected(Register register, long id, PersonCorrection correction, long seen)
    {
        register.EditPerson.Run(Counted.Figure(id), correction, seen);

        return register.LookAround.Book().People[id];
    }

    private static string? Changed(Form form, string label) => form.FieldOf(label) is var field && field.Text.Trim() == field.AsGiven.Trim() ? null : field.Text.Trim();
}

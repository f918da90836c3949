using EditionRegister.Domain.Dates;
using EditionRegister.Domain.Shows;
using EditionRegister.Tui.Asking;
using EditionRegister.Tui.Hall;
using EditionRegister.UseCases;
using EditionRegister.UseCases.People;
using EditionRegister.UseCases.Shows;

namespace EditionRegister.Tui.Shows;

/// <summary>What is asked of a show, when it is made and when it is put right.</summary>
internal static class ShowForm
{
    private const string Name = "Name";
    private const string Kind = "Kind";
    private const string Place = "Place";
    private const string Host = "Host";
    private const string Opens = "Opens";
    private const string Closes = "Closes";
    private const string Note = "Note";

    /// <summary>Said wherever pupils' prints are to be shown.</summary>
    public const string Caution = "What may be shown of pupils and their prints is for the school's policy and the law where you are to say.";

    public static Form New(Desk desk, ShowKnown known) => new("Make a show", FieldsOf(known, null, null), form => MakeAsync(desk, form))
    {
        OwnEachTime = [Name, Opens, Closes, Note],
        Caution = Caution,
    };

    public static Form Edit(Desk desk, ShowKnown known, ShowSeen seen) => new($"Put right: {seen.Show.ShownName}", FieldsOf(known, seen.Show, seen.Book), form => EditAsync(desk, form, seen.Show))
    {
        Name = FormattableString.Invariant($"show {seen.Show.Id}"),
        About = ["What is emptied is forgotten; a place or a host can be changed, but not taken away."],
        Caution = Caution,
    };

    private static Field[] FieldsOf(ShowKnown known, Show? show, Domain.People.AddressBook? book) =>
    [
        new Field(Name, show?.Name ?? "") { IsNeeded = true, Form = "as it is announced: Open studio 2026" },
        Field.OneOf(Kind, ShowKind.Words, show?.Kind),
        Known(Place, known.Places, "where it is held: Studio, or the end of a place's path", show?.Place is { } place ? book!.PathOf(place) : ""),
        Known(Host, known.People, "who holds it: a name of the address book", show?.Host is { } host ? book!.NameOf(host) : ""),
        Fields.Date(Opens, show?.Opens.Text ?? ""),
        Fields.Date(Closes, show?.Closes.Text ?? ""),
        new Field(Note, show?.Note ?? "") { Form = "hanging and fetching, what to bring" },
    ];

    /// <summary>What was once named can be changed, but no correction takes it away.</summary>
    private static Field Known(string label, IReadOnlyList<string> known, string form, string given) =>
        new(label, given) { Form = form, IsNeeded = given.Length > 0, Known = typed => Fields.Matching(known, typed) };

    private static async Task<Saved> MakeAsync(Desk desk, Form form)
    {
        var (show, sentence) = await desk.Store.Do(register =>
        {
            var book = register.LookAround.Book();
            var id = register.MakeShow.Run(new NewShow
            {
                Name = form[Name]!,
                Kind = form[Kind]!,
                Place = PlaceOf(book, form),
                Host = HostOf(book, form),
                Opens = RecordedDate.Read(form[Opens] ?? ""),
                Closes = RecordedDate.Read(form[Closes] ?? ""),
                Note = form[Note],
            });

            return (id, ShowsShown.Recorded(register.LookAround.Show(id).Show));
        });

        return new Saved($"{sentence} Press a to list sheets for it.", new ShowPage(desk, show));
    }

    private static async Task<Saved> EditAsync(Desk desk, Form form, Show before)
    {
        var (correction, sentence, v) = await desk.Store.Do(register =>
        {
            var book = register.LookAround.Book();
            ShowCorrection changes = new()
            {
                Name = Changed(form, Name, before.Name),
                Kind = Changed(form, Kind, before.Kind),
                Place = form.FieldOf(Place) is { Answer: not null } place && place.Text != place.AsGiven ? PlaceOf(book, form) : null,
                Host = form.FieldOf(Host) is { Answer: not null } host && host.Text != host.AsGiven ? HostOf(book, form) : null,
                Opens = Changed(form, Opens, before.Opens.Text) is { } opens ? RecordedDate.Read(opens) : null,
                Closes = Changed(form, Closes, before.Closes.Text) is { } closes ? RecordedDate.Read(closes) : null,
                Note = Changed(form, Note, before.Note),
            };

            return changes == new ShowCorrection() ? (changes, "Nothing was changed: all stands as it did.", before.V) : PutRight(register, before, changes);
        });

        return new Saved(sentence) { Undo = correction == new ShowCorrection() ? null : ShowUndo.Of(desk, before, correction, v) };
    }

    private static (ShowCorrection Correction, string Sentence, long V) PutRight(Register register, Show before, ShowCorrection changes)
    {
        register.EditShow.Run(before.Id, changes, before.V);
        var now = register.LookAround.Show(before.Id).Show;

        return (changes, ShowsShown.PutRight(now), now.V);
    }

    private static string? Changed(Form form, string label, string? before) => (form[label] ?? "") == (before ?? "") ? null : form[label] ?? "";

    private static long? PlaceOf(Domain.People.AddressBook book, Form form) => form[Place] is { } path ? Places.Find(book, path) : null;

    private static long? HostOf(Domain.People.AddressBook book, Form form) => form[Host] is { } who ? Persons.Find(book, who) : null;
}

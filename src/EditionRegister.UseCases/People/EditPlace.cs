using EditionRegister.Domain.Facts;
using EditionRegister.Domain.People;
using EditionRegister.Domain.Text;
using EditionRegister.Store;

namespace EditionRegister.UseCases.People;

/// <summary>Corrects what the address book says of a place, or moves it into another or out of it. What lies in it stays in it.</summary>
public sealed class EditPlace(RegisterStore store)
{
    /// <param name="id">The place.</param>
    /// <param name="correction">What is put right.</param>
    /// <param name="seen">The entry that had last written the place when the caller looked.</param>
    /// <exception cref="Domain.RefusedException">place-missing, place-known-already, place-in-itself, place-not-found, person-not-found, person-ambiguous, changed-meanwhile.</exception>
    public void Run(long id, PlaceCorrection correction, long? seen = null) => store.Write("edit-place", writing =>
    {
        var book = writing.Read.Book;
        var place = book.Places[id];

        var inside = InsideOf(book, place, correction);

        if (correction.Name is not null || correction.Inside is not null)
        {
            NameIsFree(book, place, correction.Name ?? place.Name ?? "", inside);
        }

        var deed = writing.On(Root.Place(id));

        foreach (var (fact, value) in Changes(book, correction, inside))
        {
            writing.StillAsSeen("place", id, seen, fact, value);
            deed.Set("place", id, (fact, value));
        }

        return true;
    });

    private static long? InsideOf(AddressBook book, Place place, PlaceCorrection correction)
    {
        if (correction.Inside is not { } path)
        {
            return place.Inside;
        }

        long? inside = path.Length == 0 ? null : Places.Find(book, path);

        return inside is { } outer && book.IsWithin(outer, place.Id) ? throw PeopleRefusals.PlaceInItself(book.PathOf(place.Id), book.PathOf(outer)) : inside;
    }

    private static void NameIsFree(AddressBook book, Place place, string name, long? inside)
    {
        // A name that would be parted into several is a path, and not the name of one place.
        if (Places.Split(name) is not [var one] || one != name.Trim())
        {
            throw PeopleRefusals.PlaceEmpty();
        }

        if (book.Places.Values.FirstOrDefault(other => other.Id != place.Id && other.Inside == inside && other.Name is { } known && SearchText.Fold(known) == SearchText.Fold(one)) is { } same)
        {
            throw PeopleRefusals.PlaceKnownAlready(book.PathOf(same.Id), same.Id);
        }
    }

    private static IEnumerable<(string Fact, FactValue Value)> Changes(AddressBook book, PlaceCorrection correction, long? inside)
    {
        if (correction.Inside is not null)
        {
            yield return ("inside", inside);
        }

        if (correction.Name is { } name)
        {
            yield return ("name", name.Trim());
        }

        if (correction.Keeper is { } keeper)
        {
            yield return ("keeper", keeper.Length == 0 ? FactValue.Null : Persons.Find(book, keeper));
        }

        if (correction.Note is { } note)
        {
            yield return ("note", note.Length == 0 ? FactValue.Null : note);
        }
    }
}

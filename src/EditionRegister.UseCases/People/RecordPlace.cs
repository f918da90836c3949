using EditionRegister.Domain.Facts;
using EditionRegister.Domain.People;
using EditionRegister.Domain.Text;
using EditionRegister.Store;

namespace EditionRegister.UseCases.People;

/// <summary>Records a place, and the places around it that are not known yet, from a path like "Studio › Plan chest › Drawer 3".</summary>
public sealed class RecordPlace(RegisterStore store)
{
    /// <summary>Answers the id of the innermost place; a place known already is left as it is.</summary>
    /// <exception cref="Domain.RefusedException">place-missing.</exception>
    public long Run(string path, long? keeper = null) => store.Write("record-place", writing =>
    {
        var names = Places.Split(path);

        if (names.Count == 0)
        {
            throw PeopleRefusals.PlaceEmpty();
        }

        return Record(writing.Read.Book, writing.On, names, keeper, writing.Read.Book.Places.Keys.DefaultIfEmpty().Max() + 1).Place;
    });

    /// <summary>Finds or makes each place of a path; answers the innermost, and the next id that is free.</summary>
    internal static (long Place, long NextId) Record(AddressBook book, Func<Root, Deed> on, IReadOnlyList<string> names, long? keeper, long nextId)
    {
        long? inside = null;

        foreach (var name in names)
        {
            var known = book.Places.Values.FirstOrDefault(place => place.Inside == inside && place.Name is { } called && SearchText.Fold(called) == SearchText.Fold(name));

            if (known is null)
            {
                on(Root.Place(nextId)).Set("place", nextId, ("name", name), ("inside", inside), ("keeper", keeper));
                inside = nextId++;
            }
            else
            {
                inside = known.Id;
            }
        }

        return (inside!.Value, nextId);
    }
}

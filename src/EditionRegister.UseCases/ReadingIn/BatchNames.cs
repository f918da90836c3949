using EditionRegister.Domain.Facts;
using EditionRegister.Domain.People;
using EditionRegister.Domain.Text;
using EditionRegister.Store.Logbook;
using EditionRegister.UseCases.People;

namespace EditionRegister.UseCases.ReadingIn;

/// <summary>People and places a file names: those the register knows, and those it makes as they are met.</summary>
internal sealed class BatchNames(Writing writing)
{
    private readonly Dictionary<string, long> _people = new(StringComparer.Ordinal);
    private readonly Dictionary<(long? Inside, string Name), long> _places = writing.Read.Book.Places.Values
        .Where(place => place.Name is not null)
        .GroupBy(place => (place.Inside, SearchText.Fold(place.Name!)))
        .ToDictionary(same => same.Key, same => same.First().Id);

    private long _nextPerson = writing.Read.Book.People.Keys.DefaultIfEmpty().Max() + 1;
    private long _nextPlace = writing.Read.Book.Places.Keys.DefaultIfEmpty().Max() + 1;

    public long Person(string name)
    {
        var folded = SearchText.Fold(name);

        if (!_people.TryGetValue(folded, out var id))
        {
            id = Known(name, folded) ?? Make(name);
            _people.Add(folded, id);
        }

        return id;
    }

    public long Place(string path, long? keeper)
    {
        long? inside = null;

        foreach (var name in Places.Split(path))
        {
            var key = (inside, SearchText.Fold(name));

            if (!_places.TryGetValue(key, out var id))
            {
                id = _nextPlace++;
                writing.On(Root.Place(id)).Set("place", id, ("name", name), ("inside", inside), ("keeper", inside is null ? keeper : null));
                _places.Add(key, id);
            }

            inside = id;
        }

        return inside!.Value;
    }

    private long? Known(string name, string folded)
    {
        var people = writing.Read.Book.People.Values.Where(person => !person.IsErased).OrderBy(person => person.Id).ToList();

        return (people.FirstOrDefault(person => person.Name is { } known && SearchText.Fold(known) == folded)
            ?? people.FirstOrDefault(person => person.Policy == "wording" && person.Wording == name))?.Id;
    }

    private long Make(string name)
    {
        var isPrivate = name == PublicName.PrivateCollection;
        NewPerson person = new() { Name = name, Wording = isPrivate ? name : null };

        return RecordPerson.Record(writing.On, _nextPerson++, person, isPrivate ? "wording" : "full");
    }
}

using EditionRegister.Domain.People;
using EditionRegister.Domain.Text;
using EditionRegister.Store.Logbook;
using EditionRegister.UseCases.People;

namespace EditionRegister.UseCases.ReadingIn;

/// <summary>People and places a file names: those the register knows, and those it makes as they are met.</summary>
internal sealed class BatchNames(Writing writing)
{
    private readonly Dictionary<string, long> _people = new(StringComparer.Ordinal);
    private readonly PlacesOnTheWay _places = new(writing);

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

    public long Place(string path) => _places.Find(Places.Split(path), keeper: null);

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

        return RecordPerson.Record(writing, person, isPrivate ? "wording" : "full");
    }
}

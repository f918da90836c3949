namespace EditionRegister.Domain.People;

/// <summary>Everyone and every place the register knows, by id.</summary>
public sealed class AddressBook(IReadOnlyDictionary<long, Person> people, IReadOnlyDictionary<long, Place> places)
{
    /// <summary>Between the places of a path, in every list and file.</summary>
    public const string Inside = " › ";

    public IReadOnlyDictionary<long, Person> People { get; } = people;

    public IReadOnlyDictionary<long, Place> Places { get; } = places;

    public Person? Person(long? id) => id is { } known && People.TryGetValue(known, out var person) ? person : null;

    /// <summary>The whole name, for the keeper of the register; never for the public.</summary>
    public string NameOf(long? id) => Person(id)?.FullName ?? "unknown";

    /// <summary>Whether a place is another or lies in it, however deep.</summary>
    public bool IsWithin(long? place, long outer)
    {
        HashSet<long> met = [];

        for (var at = place; at is { } here && met.Add(here); at = Places.GetValueOrDefault(here)?.Inside)
        {
            if (here == outer)
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>From the outermost place to this one. A place that lies in itself, by damage, is named once.</summary>
    public string PathOf(long? id)
    {
        List<string> names = [];
        HashSet<long> met = [];

        for (var at = id; at is { } here && met.Add(here) && Places.TryGetValue(here, out var place); at = place.Inside)
        {
            names.Insert(0, place.Name ?? "(erased)");
        }

        return names.Count == 0 ? "unknown" : string.Join(Inside, names);
    }
}

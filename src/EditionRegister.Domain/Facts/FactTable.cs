namespace EditionRegister.Domain.Facts;

/// <summary>A register table as the logbook knows it: its permanent name and its facts, sorted by name.</summary>
public sealed class FactTable
{
    private readonly Dictionary<string, int> _places = new(StringComparer.Ordinal);

    internal FactTable(int index, int since, string name, IEnumerable<Fact> facts)
    {
        Index = index;
        Since = since;
        Name = name;
        Facts = [.. facts.OrderBy(fact => fact.Name, StringComparer.Ordinal)];

        for (var place = 0; place < Facts.Count; place++)
        {
            _places.Add(Facts[place].Name, place);
        }
    }

    /// <summary>Its place in the catalogue, parents before children.</summary>
    public int Index { get; }

    /// <summary>The form of register that first had it; a register of an older form has no such table.</summary>
    public int Since { get; }

    public string Name { get; }

    public IReadOnlyList<Fact> Facts { get; }

    public IEnumerable<Fact> Sealed => Facts.Where(fact => fact.Keeping == Keeping.Sealed);

    public IEnumerable<Fact> Derived => Facts.Where(fact => fact.Keeping == Keeping.Derived);

    /// <summary>The place of a fact in <see cref="Facts"/>, or -1 for a name the catalogue does not know.</summary>
    public int PlaceOf(string fact) => _places.TryGetValue(fact, out var place) ? place : -1;
}

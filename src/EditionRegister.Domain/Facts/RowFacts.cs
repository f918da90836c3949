namespace EditionRegister.Domain.Facts;

/// <summary>Facts set on one row by one entry, sorted by name as they stand in the entry.</summary>
public sealed class RowFacts(FactTable table, long id)
{
    private readonly SortedDictionary<int, FactValue> _values = [];

    public FactTable Table { get; } = table;

    public long Id { get; } = id;

    /// <summary>Facts and values in the order of their names.</summary>
    public IEnumerable<(Fact Fact, FactValue Value)> Values => _values.Select(pair => (Table.Facts[pair.Key], pair.Value));

    public bool Has(Keeping keeping) => _values.Keys.Any(place => Table.Facts[place].Keeping == keeping);

    /// <exception cref="ArgumentException">The catalogue has no such fact, or it holds another type, or it is worked out and never set.</exception>
    public void Put(string fact, FactValue value)
    {
        var place = Table.PlaceOf(fact);
        var known = place >= 0
            && Table.Facts[place] is { Keeping: not Keeping.Derived } found
            && (value.IsNull || found.IsNumber == value.Number.HasValue);

        if (!known)
        {
            throw new ArgumentException($"{Table.Name}.{fact} cannot be set to {value}.", nameof(fact));
        }

        _values[place] = value;
    }
}

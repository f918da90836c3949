namespace EditionRegister.Domain.Facts;

/// <summary>What one deed sets on one thing: final values of facts, and rows that are no more. Becomes one entry of the logbook.</summary>
/// <param name="root">What it is about.</param>
/// <param name="nextId">Gives an id that no row of a table ever had.</param>
/// <param name="isNew">Whether an id was given in the same go, by whichever deed.</param>
public sealed class Deed(Root root, Func<string, long> nextId, Func<string, long, bool>? isNew = null)
{
    private readonly Dictionary<(string Table, long Id), RowFacts> _rows = [];
    private readonly List<RowFacts> _sets = [];
    private readonly List<RowName> _unsets = [];
    private readonly List<RowName> _erasures = [];

    public Root Root { get; } = root;

    /// <summary>Rows with the facts set on them, in the order in which they were first named.</summary>
    public IReadOnlyList<RowFacts> Sets => _sets;

    /// <summary>Rows undone.</summary>
    public IReadOnlyList<RowName> Unsets => _unsets;

    /// <summary>Rows whose sealed facts are to be forgotten for good.</summary>
    public IReadOnlyList<RowName> Erasures => _erasures;

    public bool IsEmpty => _sets.Count == 0 && _unsets.Count == 0 && _erasures.Count == 0;

    /// <summary>A fresh id, never used in this table before.</summary>
    public long NewId(string table) => nextId(table);

    /// <summary>Whether the row is made in this same go: it has no facts yet that could be left standing.</summary>
    public bool IsNew(string table, long id) => isNew?.Invoke(table, id) ?? false;

    /// <exception cref="ArgumentException">The catalogue has no such fact, or it holds another type.</exception>
    public void Set(string table, long id, params ReadOnlySpan<(string Fact, FactValue Value)> facts)
    {
        if (!_rows.TryGetValue((table, id), out var row))
        {
            row = new RowFacts(FactCatalogue.Table(table), id);
            _rows.Add((table, id), row);
            _sets.Add(row);
        }

        foreach (var (fact, value) in facts)
        {
            row.Put(fact, value);
        }
    }

    public void Unset(string table, long id)
    {
        _unsets.Add(new RowName(FactCatalogue.Table(table).Name, id));
    }

    /// <summary>Forgets everything ever sealed about a row. The row is named among the sets, so that its v says which entry did it.</summary>
    public void Erase(string table, long id)
    {
        Set(table, id);
        _erasures.Add(new RowName(FactCatalogue.Table(table).Name, id));
    }
}

/// <summary>A row of the register by table and id.</summary>
public readonly record struct RowName(string Table, long Id);

using EditionRegister.Domain.Facts;
using EditionRegister.Store.Logbook;

namespace EditionRegister.Store.Integrity;

/// <summary>What the tables should say once the logbook is folded.</summary>
internal sealed class FoldedTables
{
    private readonly Dictionary<long, FoldedRow>[] _tables = [.. FactCatalogue.Tables.Select(_ => new Dictionary<long, FoldedRow>())];

    private readonly long[] _highest = new long[FactCatalogue.Tables.Count];

    /// <summary>The highest id ever given in a table, whether or not that row still stands.</summary>
    public long Highest(FactTable table) => _highest[table.Index];

    public Dictionary<long, FoldedRow> Of(FactTable table) => _tables[table.Index];

    public FoldedRow Row(FactTable table, long id)
    {
        var rows = _tables[table.Index];

        if (!rows.TryGetValue(id, out var row))
        {
            row = new FoldedRow(new FactValue[table.Facts.Count]);
            rows.Add(id, row);
            _highest[table.Index] = Math.Max(_highest[table.Index], id);
        }

        return row;
    }

    public void Remove(FactTable table, long id) => _tables[table.Index].Remove(id);
}

/// <summary>One row: its facts in the order of its table, and the entry that last wrote it.</summary>
internal sealed class FoldedRow(FactValue[] values)
{
    public FactValue[] Values { get; } = values;

    public long V { get; set; }

    public void Set(List<ReadFact> facts)
    {
        foreach (var fact in facts)
        {
            Values[fact.Place] = fact.Value;
        }
    }
}

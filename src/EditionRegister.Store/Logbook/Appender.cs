using EditionRegister.Domain.Facts;
using EditionRegister.Store.Proof;
using EditionRegister.Store.Sqlite;
using Microsoft.Data.Sqlite;

namespace EditionRegister.Store.Logbook;

/// <summary>Appends entries and applies the same facts to the tables, inside the transaction that holds the lock.</summary>
internal sealed class Appender(SqliteConnection connection, Randomness randomness) : IDisposable
{
    private readonly EntryBody _body = new();
    private readonly RowWriter _rows = new(connection);
    private readonly Frontier _frontier = Frontiers.Load(connection);
    private long _n = connection.Number("SELECT coalesce(max(n), 0) FROM logbook");

    public void Append(Deed deed, string name, string at, long? batch, long? by)
    {
        EnsureErasable(deed);
        EntryHead entry = new(++_n, at, batch, by, name, deed.Root.ToString());
        var erased = deed.Erasures.SelectMany(row => Erasure.SealedRowsOf(connection, row)).ToList();
        var body = _body.Write(entry, deed, erased, randomness);
        LogbookRow.Insert(connection, _frontier, entry, body);

        foreach (var row in deed.Sets)
        {
            Apply(deed, row, entry.N);
        }

        Forget(deed, erased, entry.N);

        foreach (var row in deed.Unsets)
        {
            _rows.Unset(FactCatalogue.Table(row.Table), row.Id);
        }

        foreach (var facts in _body.Sealed)
        {
            LogbookRow.InsertSealed(connection, entry.N, facts);
        }
    }

    public void SaveFrontier() => Frontiers.Write(connection, _frontier);

    public void Dispose() => _rows.Dispose();

    /// <summary>What an entry seals it cannot erase: the row would be empty and its sealed facts would still stand.</summary>
    private static void EnsureErasable(Deed deed)
    {
        var both = deed.Erasures.Where(row => deed.Sets.Any(set => set.Table.Name == row.Table && set.Id == row.Id && set.Has(Keeping.Sealed))).ToList();

        if (both.Count > 0)
        {
            throw new ArgumentException($"One deed cannot seal facts of {both[0]} and erase them.", nameof(deed));
        }
    }

    private void Apply(Deed deed, RowFacts row, long n)
    {
        List<(Fact, FactValue)> values = [.. row.Values];

        if (values.Count > 0)
        {
            _rows.Set(row.Table, row.Id, values, n);
        }
        else if (!_rows.Touch(row.Table, row.Id, n) && !deed.Unsets.Contains(new RowName(row.Table.Name, row.Id)))
        {
            // What was undone left sealed facts behind; erasing those says again, in the same entry, that the row is no more.
            throw new ArgumentException($"{row.Table.Name} {row.Id} does not stand in its table; to erase what it left behind, unset it in the same deed.", nameof(deed));
        }
    }

    private void Forget(Deed deed, List<SealedName> erased, long n)
    {
        foreach (var facts in erased)
        {
            connection.Run("DELETE FROM sealed WHERE n = @1 AND i = @2", facts.N, facts.Index);
        }

        foreach (var row in deed.Erasures)
        {
            _rows.Forget(FactCatalogue.Table(row.Table), row.Id, n);
        }
    }
}

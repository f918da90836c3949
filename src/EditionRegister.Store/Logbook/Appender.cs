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
    private readonly Frontier _frontier = Frontier.Load(Frontiers.Read(connection));
    private long _n = connection.Number("SELECT coalesce(max(n), 0) FROM logbook");

    public void Append(Deed deed, string name, string at, long? batch, long? by)
    {
        var n = ++_n;
        var erased = deed.Erasures.SelectMany(row => Erasure.SealedRowsOf(connection, row)).ToList();
        var body = _body.Write(new EntryHead(n, at, batch, by, name, deed.Root.ToString()), deed, erased, randomness);
        InsertEntry(n, at, deed.Root, batch, name, body);

        foreach (var row in deed.Sets)
        {
            _rows.Set(row.Table, row.Id, [.. row.Values], n);
        }

        foreach (var row in deed.Unsets)
        {
            _rows.Unset(FactCatalogue.Table(row.Table), row.Id);
        }

        foreach (var facts in _body.Sealed)
        {
            connection.Run("INSERT INTO sealed (n, i, salt, body) VALUES (@1, @2, @3, @4)", n, facts.Index, facts.Salt, facts.Body);
        }

        Forget(deed, erased, n);
    }

    public void SaveFrontier() => Frontiers.Write(connection, _frontier);

    public void Dispose() => _rows.Dispose();

    private void InsertEntry(long n, string at, Root root, long? batch, string name, byte[] body)
    {
        var leaf = MerkleTree.LeafHash(body);
        _frontier.Append(leaf);
        connection.Run(
            "INSERT INTO logbook (n, at, root, batch, deed, body, leaf, head) VALUES (@1, @2, @3, @4, @5, @6, @7, @8)",
            n, at, root.ToString(), batch, name, body, leaf, _frontier.Root());
    }

    private void Forget(Deed deed, List<SealedName> erased, long n)
    {
        foreach (var facts in erased)
        {
            connection.Run("DELETE FROM sealed WHERE n = @1 AND i = @2", facts.N, facts.Index);
        }

        foreach (var row in deed.Erasures)
        {
            var table = FactCatalogue.Table(row.Table);
            _rows.Set(table, row.Id, [.. table.Sealed.Select(fact => (fact, FactValue.Null))], n);
        }
    }
}

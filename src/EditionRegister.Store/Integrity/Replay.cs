using System.Globalization;
using System.Text.Json;
using EditionRegister.Domain.Integrity;
using EditionRegister.Store.Logbook;
using EditionRegister.Store.Proof;
using EditionRegister.Store.Sqlite;
using Microsoft.Data.Sqlite;

namespace EditionRegister.Store.Integrity;

/// <summary>
/// Folds the logbook from its first entry, proving each leaf, head and sealed fact on the way; what it ends with is what the
/// tables should say. Damage becomes findings, never an exception.
/// </summary>
internal sealed class Replay(SqliteConnection connection)
{
    private readonly EntryReader _entry = new();
    private readonly Frontier _frontier = new();
    private readonly HashSet<SealedName> _missing = [];
    private readonly Dictionary<SealedName, Subject> _erased = [];
    private readonly List<Finding> _findings = [];
    private long _last;

    public FoldedTables Tables { get; } = new();

    public IReadOnlyList<Finding> Findings => _findings;

    public void Run()
    {
        using (SealedRows sealedRows = new(connection))
        using (var command = connection.Command("SELECT n, at, root, batch, deed, body, leaf, head FROM logbook ORDER BY n"))
        using (var reader = command.ExecuteReader())
        {
            while (reader.Read())
            {
                Entry(reader, sealedRows);
            }

            foreach (var stray in sealedRows.Rest())
            {
                Sealed(stray, "lies in the register, but no entry speaks of it");
            }
        }

        ErasedAndMissing();
        FrontierForTheNextEntry();
    }

    private static Subject SubjectOf(long n) => new("entry", n, string.Create(CultureInfo.InvariantCulture, $"entry {n}"));

    private void Entry(SqliteDataReader row, SealedRows sealedRows)
    {
        var n = row.GetInt64(0);

        if (n != _last + 1)
        {
            Broken(n, string.Create(CultureInfo.InvariantCulture, $"entry {_last + 1} is followed by entry {n}: entries are missing."));
        }

        _last = n;
        var body = row.BytesOrNone(5);
        Hashes(n, body, row.BytesOrNone(6), row.BytesOrNone(7));

        try
        {
            _entry.Read(body);
        }
        catch (JsonException damage)
        {
            Broken(n, $"its text cannot be read ({damage.Message}).");

            return;
        }

        Head(n, row);
        Fold(n, sealedRows);
    }

    private void Hashes(long n, byte[] body, byte[] leaf, byte[] head)
    {
        var computed = MerkleTree.LeafHash(body);
        _frontier.Append(computed);

        if (!computed.AsSpan().SequenceEqual(leaf))
        {
            Broken(n, "its text is not the one its leaf hash was made of.");
        }

        if (!_frontier.Root().AsSpan().SequenceEqual(head))
        {
            Broken(n, "its head is not the hash of the entries up to here.");
        }
    }

    private void Head(long n, SqliteDataReader row)
    {
        var same = _entry.N == n
            && row.ValueOrNull(1) == _entry.At
            && row.ValueOrNull(2) == _entry.Root
            && row.ValueOrNull(3) == _entry.Batch
            && row.ValueOrNull(4) == _entry.Deed;

        if (!same)
        {
            Broken(n, "its number, time, root, batch or deed is not what its text says.");
        }
    }

    private void Fold(long n, SealedRows sealedRows)
    {
        for (var i = 0; i < _entry.Sets.Count; i++)
        {
            var row = _entry.Sets[i];
            var folded = Tables.Row(row.Table, row.Id);
            folded.V = n;

            folded.Set(row.Facts);

            if (row.Commitment is not null)
            {
                Unseal(new SealedName(n, i), row, folded, sealedRows);
            }
        }

        foreach (var row in _entry.Unsets)
        {
            Tables.Remove(row.Table, row.Id);
        }

        foreach (var name in _entry.Erased)
        {
            _erased[name] = SubjectOf(n);
        }
    }

    private void Unseal(SealedName name, ReadRow row, FoldedRow folded, SealedRows sealedRows)
    {
        foreach (var stray in sealedRows.Before(name))
        {
            Sealed(stray, "lies in the register, but no entry speaks of it");
        }

        if (sealedRows.Take(name) is not { } facts)
        {
            _missing.Add(name);

            return;
        }

        if (EntryBody.Commit(facts.Salt, facts.Body) != row.Commitment)
        {
            Sealed(name, "is not the one the entry committed to");
        }

        try
        {
            var unsealed = RowJson.ReadSealed(facts.Body);

            if (unsealed.Table != row.Table || unsealed.Id != row.Id)
            {
                Sealed(name, "speaks of another row than its entry");

                return;
            }

            folded.Set(unsealed.Facts);
        }
        catch (JsonException damage)
        {
            Sealed(name, $"cannot be read ({damage.Message})");
        }
    }

    private void ErasedAndMissing()
    {
        foreach (var name in _missing.Where(name => !_erased.ContainsKey(name)))
        {
            Sealed(name, "is gone, and no entry says that it was erased");
        }

        foreach (var (name, entry) in _erased)
        {
            if (!_missing.Contains(name))
            {
                Sealed(name, $"was erased by {entry}, but is still there");
            }
        }
    }

    private void FrontierForTheNextEntry()
    {
        if (!SavedFrontier.Agrees(connection, _frontier))
        {
            Broken(_last, "the hash tree kept for the next entry is not the one the entries give: entries are missing at the end, or the tree was changed.");
        }
    }

    private void Sealed(SealedName name, string what) => _findings.Add(FileRule.SealedFactsAgree.Broken(
        SubjectOf(name.N),
        string.Create(CultureInfo.InvariantCulture, $"Entry {name.N}: sealed part {name.Index} {what}.")));

    private void Broken(long n, string what) => _findings.Add(FileRule.LogbookIsUnbroken.Broken(
        SubjectOf(n),
        string.Create(CultureInfo.InvariantCulture, $"Entry {n}: {what}")));
}

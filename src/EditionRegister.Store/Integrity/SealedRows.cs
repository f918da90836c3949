using EditionRegister.Store.Logbook;
using EditionRegister.Store.Sqlite;
using Microsoft.Data.Sqlite;

namespace EditionRegister.Store.Integrity;

/// <summary>Walks the sealed facts in step with the entries, both in the order of the logbook.</summary>
internal sealed class SealedRows : IDisposable
{
    private readonly SqliteCommand _command;
    private readonly SqliteDataReader _reader;

    // Null when all are read.
    private SealedName? _here;

    public SealedRows(SqliteConnection connection)
    {
        _command = connection.Command("SELECT n, i, salt, body FROM sealed ORDER BY n, i");
        _reader = _command.ExecuteReader();
        Next();
    }

    /// <summary>Sealed rows that stand before <paramref name="name"/> and so belong to no entry met so far.</summary>
    public IEnumerable<SealedName> Before(SealedName name)
    {
        while (_here is { } stray && Compare(stray, name) < 0)
        {
            Next();

            yield return stray;
        }
    }

    public SealedFacts? Take(SealedName name)
    {
        if (_here != name)
        {
            return null;
        }

        SealedFacts facts = new(name.Index, _reader.BytesOrNone(2), _reader.BytesOrNone(3));
        Next();

        return facts;
    }

    public IEnumerable<SealedName> Rest() => Before(new SealedName(long.MaxValue, int.MaxValue));

    public void Dispose()
    {
        _reader.Dispose();
        _command.Dispose();
    }

    private void Next() =>
        _here = _reader.Read() ? new SealedName(_reader.GetInt64(0), (int)Math.Clamp(_reader.GetInt64(1), int.MinValue, int.MaxValue - 1)) : null;

    private static int Compare(SealedName left, SealedName right) =>
        left.N != right.N ? left.N.CompareTo(right.N) : left.Index.CompareTo(right.Index);
}

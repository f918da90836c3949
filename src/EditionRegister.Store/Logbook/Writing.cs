using EditionRegister.Domain;
using EditionRegister.Domain.Facts;
using EditionRegister.Store.Sqlite;
using Microsoft.Data.Sqlite;

namespace EditionRegister.Store.Logbook;

/// <summary>
/// One deed under way, with the write lock held: what it reads is what stands, and what it sets becomes entries when it ends.
/// </summary>
public sealed class Writing
{
    private readonly Dictionary<string, long> _nextIds = new(StringComparer.Ordinal);
    private readonly Dictionary<string, long> _firstNew = new(StringComparer.Ordinal);
    private readonly Dictionary<Root, Deed> _byRoot = [];
    private readonly List<Deed> _deeds = [];

    internal Writing(SqliteConnection connection, Randomness randomness, string at)
    {
        Connection = connection;
        Randomness = randomness;
        At = at;
        Read = new Reading.Reader(connection);
    }

    /// <summary>Reads the register as it stands under the lock.</summary>
    public Reading.Reader Read { get; }

    public Randomness Randomness { get; }

    /// <summary>When this deed is recorded, UTC, ISO 8601 with milliseconds.</summary>
    public string At { get; }

    internal SqliteConnection Connection { get; }

    /// <summary>The batch that all entries of this deed belong to, once there is one.</summary>
    internal long? Batch { get; private set; }

    internal IReadOnlyList<Deed> Deeds => _deeds;

    /// <summary>What this deed sets on one root; asking again gives the same.</summary>
    public Deed On(Root root)
    {
        if (!_byRoot.TryGetValue(root, out var deed))
        {
            deed = new Deed(root, NewId, IsNew);
            _byRoot.Add(root, deed);
            _deeds.Add(deed);
        }

        return deed;
    }

    /// <summary>A batch for a deed over many roots, or for a file read in; its own entry comes first.</summary>
    public long StartBatch(string kind, params ReadOnlySpan<(string Fact, FactValue Value)> facts)
    {
        var id = NewId("batch");
        Deed deed = new(Root.Batch(id), NewId, IsNew);
        deed.Set("batch", id, ("kind", kind), ("undone", "no"));
        deed.Set("batch", id, facts);
        _byRoot.Add(deed.Root, deed);
        _deeds.Insert(0, deed);
        Batch = id;

        return id;
    }

    /// <summary>What a batch did to each row, and what its facts said before.</summary>
    public BatchTraced Trace(long batch) => BatchTrace.Of(Connection, batch);

    /// <summary>Refuses when a row was written by another deed since the caller saw it.</summary>
    /// <param name="table">The row's table.</param>
    /// <param name="id">The row's id.</param>
    /// <param name="seen">The v of the row as the caller read it, or null when the caller did not look.</param>
    /// <param name="fact">The fact the caller wants to change.</param>
    /// <param name="wanted">The value the caller wants it to have.</param>
    /// <exception cref="RefusedException">changed-meanwhile, with both values.</exception>
    public void StillAsSeen(string table, long id, long? seen, string fact, FactValue wanted)
    {
        if (seen is null)
        {
            return;
        }

        if (FactCatalogue.Table(table).PlaceOf(fact) < 0)
        {
            throw new ArgumentException($"The catalogue has no {table}.{fact}.", nameof(fact));
        }

        using var command = Connection.Command($"SELECT v, {fact} FROM {FactCatalogue.Table(table).Name} WHERE id = @1", id);
        using var reader = command.ExecuteReader();

        if (!reader.Read())
        {
            throw new RefusedException(
                "changed-meanwhile",
                $"Someone took this away while you were looking at it; you wanted {fact.Replace('_', ' ')} to be “{wanted}”. Nothing was changed. Look at it as it stands and do this again.");
        }

        if (reader.GetInt64(0) == seen)
        {
            return;
        }

        var now = reader.IsDBNull(1) ? FactValue.Null.ToString() : Convert.ToString(reader.GetValue(1), System.Globalization.CultureInfo.InvariantCulture);

        throw new RefusedException(
            "changed-meanwhile",
            $"Someone changed this while you were looking at it: {fact.Replace('_', ' ')} is now “{now}”, you wanted “{wanted}”. Nothing was changed. Look at it as it stands and do this again.");
    }

    /// <summary>An id never given before, for a thing that is to be a root of its own.</summary>
    public long NewId(string table)
    {
        if (!_nextIds.TryGetValue(table, out var next))
        {
            // Not the highest id that stands: the row that had the highest may have been undone, and the logbook still speaks of it.
            next = 1 + Connection.Number(
                $"SELECT max(coalesce((SELECT max(id) FROM {FactCatalogue.Table(table).Name}), 0), coalesce((SELECT seq FROM sqlite_sequence WHERE name = @1), 0))", table);
            _firstNew[table] = next;
        }

        _nextIds[table] = next + 1;

        return next;
    }

    private bool IsNew(string table, long id) => _firstNew.TryGetValue(table, out var first) && id >= first;
}

using EditionRegister.Domain.Documents;
using EditionRegister.Store.Integrity;
using EditionRegister.Store.Proof;
using EditionRegister.Store.Sqlite;
using Microsoft.Data.Sqlite;

namespace EditionRegister.Store.Reading;

/// <summary>What recomputing the logbook's hashes came to.</summary>
/// <param name="Entries">Entries found sound, from the first on.</param>
/// <param name="Head">The head they come to.</param>
/// <param name="BrokenAt">The first entry that does not fit, or null.</param>
/// <param name="How">What is wrong with it, as the rest of a sentence; null when nothing is.</param>
public sealed record LogbookProof(long Entries, LogbookHead Head, long? BrokenAt, string? How)
{
    public bool IsUnbroken => BrokenAt is null;
}

public sealed partial class Reader
{
    private const int EntriesBetweenReports = 1_000;

    /// <summary>Recomputes every leaf and head from the first entry on, one entry in memory at a time, up to the first that does not fit.</summary>
    /// <param name="progress">Told how many entries are done and how many there are.</param>
    /// <param name="cancelled">Stops on the way.</param>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public LogbookProof Unbroken(Action<long, long>? progress = null, CancellationToken cancelled = default)
    {
        Frontier frontier = new();
        var sound = LogbookHead.None;
        var all = Head.N;
        using var command = Connection.Command("SELECT n, body, leaf, head FROM logbook ORDER BY n");
        using var row = command.ExecuteReader();

        while (row.Read())
        {
            var n = row.Figure(0);

            if (Broken(row, frontier) is { } how)
            {
                return new LogbookProof(sound.N, sound, sound.N + 1, how);
            }

            sound = HeadOf(row, 0, 3);

            if (n % EntriesBetweenReports == 0)
            {
                cancelled.ThrowIfCancellationRequested();
                progress?.Invoke(n, all);
            }
        }

        progress?.Invoke(sound.N, all);

        return SavedFrontier.Agrees(Connection, frontier)
            ? new LogbookProof(sound.N, sound, null, null)
            : new LogbookProof(sound.N, sound, sound.N + 1, "is missing at the end, or the hash tree kept for the next entry was changed");
    }

    private static string? Broken(SqliteDataReader row, Frontier frontier)
    {
        var leaf = MerkleTree.LeafHash(row.BytesOrNone(1));

        if (row.Figure(0) != frontier.Size + 1)
        {
            return "is missing";
        }

        frontier.Append(leaf);

        return !leaf.AsSpan().SequenceEqual(row.BytesOrNone(2)) ? "is not the text its leaf hash was made of"
            : !frontier.Root().AsSpan().SequenceEqual(row.BytesOrNone(3)) ? "has a head that is not the hash of the entries up to it"
            : null;
    }
}

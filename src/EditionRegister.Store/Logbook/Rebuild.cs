using System.Globalization;
using System.Text.Json;
using EditionRegister.Domain;
using EditionRegister.Store.Sqlite;
using Microsoft.Data.Sqlite;

namespace EditionRegister.Store.Logbook;

/// <summary>One entry as stored: its number and the exact bytes of its body. Everything else about it follows from these.</summary>
public sealed record StoredEntry(long N, byte[] Body);

/// <summary>The sealed facts of one row of one entry, as stored.</summary>
public sealed record StoredSealedFacts(long N, int Index, byte[] Salt, byte[] Body);

/// <summary>
/// Makes a register's file anew from nothing but its logbook and sealed facts: the same tables, leaves, heads and frontier.
/// Rules, guards and checks of today are not asked: what was true when it was written is what is made.
/// </summary>
public static class Rebuild
{
    /// <param name="path">Where the file shall stand; nothing may stand there yet.</param>
    /// <param name="entries">From entry 1 without a gap.</param>
    /// <param name="sealedFacts">Those that were not erased, in any order.</param>
    /// <exception cref="RefusedException">logbook-unreadable: an entry is missing, or no entry this program can read.</exception>
    public static void Make(string path, IEnumerable<StoredEntry> entries, IEnumerable<StoredSealedFacts> sealedFacts)
    {
        var byEntry = sealedFacts.ToLookup(facts => facts.N);

        FreshFile.Make(path, beside =>
        {
            using var connection = FreshFile.Open(beside);
            Fold(connection, entries, byEntry);
        });
    }

    /// <summary>Folds entries from the first into an empty database; what comes of it has the form that they say it has.</summary>
    internal static void Fold(SqliteConnection connection, IEnumerable<StoredEntry> entries, ILookup<long, StoredSealedFacts> sealedFacts)
    {
        connection.Run("PRAGMA foreign_keys=OFF; PRAGMA ignore_check_constraints=ON;");
        using var transaction = connection.BeginTransaction();
        Schema.MakeTables(connection, 1, 1);

        int form;

        using (EntryPlayer player = new(connection))
        {
            foreach (var entry in entries)
            {
                Play(player, entry, sealedFacts[entry.N]);
            }

            player.SaveFrontier();
            form = player.Form;
        }

        Schema.MakeGuards(connection, form);
        Schema.SayForm(connection, form);
        transaction.Commit();
    }

    /// <summary>Makes at <paramref name="path"/> what the logbook of <paramref name="source"/> says.</summary>
    /// <exception cref="RefusedException">The source cannot be opened or read.</exception>
    public static void Make(string path, RegisterFolder source)
    {
        try
        {
            using var connection = SqliteFile.OpenToRead(source.Database);
            connection.Run("BEGIN");
            Make(path, Entries(connection), SealedFacts(connection));
        }
        catch (SqliteException failure) when (SqliteFailures.Explain(failure, source.Database) is RefusedException refusal)
        {
            throw refusal;
        }
    }

    internal static IEnumerable<StoredEntry> Entries(SqliteConnection connection)
    {
        using var command = connection.Command("SELECT n, body FROM logbook ORDER BY n");
        using var reader = command.ExecuteReader();

        while (reader.Read())
        {
            yield return new StoredEntry(reader.GetInt64(0), reader.GetFieldValue<byte[]>(1));
        }
    }

    internal static IEnumerable<StoredSealedFacts> SealedFacts(SqliteConnection connection)
    {
        using var command = connection.Command("SELECT n, i, salt, body FROM sealed ORDER BY n, i");
        using var reader = command.ExecuteReader();

        while (reader.Read())
        {
            yield return new StoredSealedFacts(reader.GetInt64(0), reader.GetInt32(1), reader.GetFieldValue<byte[]>(2), reader.GetFieldValue<byte[]>(3));
        }
    }

    private static void Play(EntryPlayer player, StoredEntry entry, IEnumerable<StoredSealedFacts> sealedFacts)
    {
        try
        {
            player.Play(entry, sealedFacts);
        }
        catch (Exception damage) when (damage is JsonException or SqliteException { SqliteErrorCode: 19 })
        {
            throw new RefusedException("logbook-unreadable", string.Create(
                CultureInfo.InvariantCulture,
                $"Entry {entry.N} of the logbook cannot be read ({damage.Message.Split(" LineNumber:")[0].TrimEnd('.')}). No register was made. Run `edreg check` on the register it comes from, and go on from the newest copy in the backups folder."));
        }
    }
}

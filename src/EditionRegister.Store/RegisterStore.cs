using EditionRegister.Domain;
using EditionRegister.Domain.Integrity;
using EditionRegister.Store.Integrity;
using EditionRegister.Store.Logbook;
using EditionRegister.Store.Reading;
using EditionRegister.Store.Sqlite;
using Microsoft.Data.Sqlite;

namespace EditionRegister.Store;

/// <summary>What a store needs from the world around it; tests and the demo bring their own.</summary>
public sealed record Surroundings(TimeProvider Time, Randomness Randomness, Action<string> Say)
{
    public static Surroundings Usual { get; } = new(TimeProvider.System, Randomness.System, _ => { });
}

/// <summary>The register's file: snapshots out, deeds in through the one writer, and the checks of the file itself.</summary>
public sealed class RegisterStore
{
    private readonly Surroundings _surroundings;
    private readonly Func<SqliteConnection> _open;
    private readonly LogbookWriter? _writer;

    /// <summary>Opens nothing yet: each read and deed opens the file for itself, and refuses where it cannot.</summary>
    /// <param name="folder">Where the register lies.</param>
    /// <param name="surroundings">Time, randomness, and where notices go.</param>
    /// <param name="by">Who writes; asked when a deed is done.</param>
    public RegisterStore(RegisterFolder folder, Surroundings surroundings, Func<long?>? by = null)
    {
        Folder = folder;
        _surroundings = surroundings;
        _open = () => SqliteFile.OpenToRead(folder.Database);
        _writer = new LogbookWriter(folder.Database, surroundings.Time, surroundings.Randomness, by ?? (() => null), surroundings.Say);
    }

    /// <summary>A register that is only looked at, wherever it lies.</summary>
    internal RegisterStore(RegisterFolder folder, Surroundings surroundings, Func<SqliteConnection> open) => (Folder, _surroundings, _open) = (folder, surroundings, open);

    public RegisterFolder Folder { get; }

    public TimeProvider Time => _surroundings.Time;

    /// <summary>Makes an empty register beside its place and renames it into it.</summary>
    /// <exception cref="RefusedException">register-exists: a register already lies there.</exception>
    public static RegisterStore Make(RegisterFolder folder, Surroundings surroundings, bool demo)
    {
        if (folder.HoldsRegister)
        {
            throw new RefusedException("register-exists", $"{folder.FullPath} already holds a register. Nothing was changed. Name another folder, or use the one that is there with --register.");
        }

        FreshFile.Make(folder.Database, beside =>
        {
            using (var connection = FreshFile.Open(beside))
            using (var transaction = connection.BeginTransaction())
            {
                Schema.Make(connection);
                transaction.Commit();
            }

            new LogbookWriter(beside, surroundings.Time, surroundings.Randomness, by: () => null, surroundings.Say)
                .Write("make-register", writing => Seeds.Sow(writing, demo));
        });

        return new RegisterStore(folder, surroundings);
    }

    /// <summary>Reads under one snapshot: what other programs write meanwhile is not seen.</summary>
    public T Read<T>(Func<Reader, T> read)
    {
        try
        {
            using var connection = _open();
            connection.Run("BEGIN");

            return read(new Reader(connection));
        }
        catch (SqliteException failure) when (SqliteFailures.Explain(failure, Folder.Database) is RefusedException refusal)
        {
            throw refusal;
        }
    }

    /// <summary>Reads, decides and writes under the write lock; see <see cref="LogbookWriter"/>.</summary>
    public T Write<T>(string deed, Func<Writing, T> decide) =>
        _writer is { } writer ? writer.Write(deed, decide) : throw new InvalidOperationException($"What is past is only looked at; {deed} cannot be done to it.");

    /// <summary>The register as its logbook had it at the end of a day where the clock stands, held in memory until it is disposed of.</summary>
    /// <exception cref="RefusedException">day-before-register, day-not-over, logbook-unreadable.</exception>
    public PastRegister AsOf(DateOnly day) => PastRegister.Fold(this, _surroundings, day);

    /// <summary>Checks the file, the logbook and every work with the rules given, all from one snapshot, changing nothing.</summary>
    public IEnumerable<Finding> Check(Func<Reader, IEnumerable<Finding>> rules)
    {
        using var connection = _open();
        connection.Run("BEGIN");

        var damaged = false;

        foreach (var finding in FileChecks.Run(connection))
        {
            damaged = true;

            yield return finding;
        }

        // On a sound file what a rule throws, beyond what the database says of itself, is our own mistake; on a damaged one it is the damage.
        foreach (var finding in Damage.Told("the works", Folder.Database, () => rules(new Reader(connection)), onlyByTheDatabase: !damaged))
        {
            yield return finding;
        }
    }
}

using System.Diagnostics;
using System.Globalization;
using EditionRegister.Store.Sqlite;
using Microsoft.Data.Sqlite;

namespace EditionRegister.Store.Logbook;

/// <summary>
/// The one writer. It takes the write lock first, lets the deed read and decide, appends one entry per root and applies the
/// same facts to the tables, all in one transaction: everything stands, or nothing does.
/// </summary>
public sealed class LogbookWriter(string database, TimeProvider time, Randomness randomness, Func<long?> by, Action<string> say)
{
    private readonly Sweep _sweep = new(database);

    /// <summary>How long to wait for another program's lock.</summary>
    internal TimeSpan Patience { get; init; } = TimeSpan.FromSeconds(10);

    /// <summary>Reads, decides and appends under the lock.</summary>
    /// <exception cref="Domain.RefusedException">What <paramref name="decide"/> refuses, or register-busy after ten seconds.</exception>
    public T Write<T>(string deed, Func<Writing, T> decide)
    {
        try
        {
            using var connection = SqliteFile.OpenToWrite(database);
            TakeLock(connection);

            // Whoever had the lock may have been a newer program, and this one has waited for it.
            SqliteFile.Recognise(connection, database);
            var result = Write(connection, deed, decide);
            SweepWhatIsDue(connection);

            return result;
        }
        catch (SqliteException failure) when (SqliteFailures.Explain(failure, database) is Domain.RefusedException refusal)
        {
            throw refusal;
        }
    }

    private T Write<T>(SqliteConnection connection, string deed, Func<Writing, T> decide)
    {
        try
        {
            var guardsWereAltered = Guards.PutBack(connection, Schema.FormOf(connection));
            Upgrade upgrade = new(connection, database);
            Writing writing = new(connection, randomness, Now());

            if (upgrade.IsDue)
            {
                upgrade.Run(Append, writing);
            }

            var result = decide(writing);
            Append(writing, deed);

            if (writing.Deeds.Any(one => one.Erasures.Count > 0))
            {
                _sweep.BecomesDue();
            }

            var copy = upgrade.IsDue ? upgrade.Copy(writing.At) : null;
            connection.Run("COMMIT");

            if (copy is not null)
            {
                say(Upgrade.Done(copy));
            }

            if (guardsWereAltered)
            {
                say(Guards.PutBackAgain);
            }

            return result;
        }
        catch
        {
            RollBack(connection);
            throw;
        }
    }

    private void SweepWhatIsDue(SqliteConnection connection)
    {
        if (_sweep.IsDue && !_sweep.Run(connection))
        {
            say(Sweep.NotYet);
        }
    }

    private static void RollBack(SqliteConnection connection)
    {
        try
        {
            connection.Run("ROLLBACK");
        }
        catch (SqliteException)
        {
            // SQLite has rolled back by itself (disk full, for one); the first failure is the one to tell.
        }
    }

    private void Append(Writing writing, string name)
    {
        if (writing.Batch is null && writing.Deeds.Count(deed => !deed.IsEmpty) > 1)
        {
            writing.StartBatch("deed");
        }

        using Appender appender = new(writing.Connection, randomness);

        foreach (var deed in writing.Deeds.Where(deed => !deed.IsEmpty))
        {
            appender.Append(deed, name, writing.At, writing.Batch, by());
        }

        appender.SaveFrontier();
    }

    private string Now() => time.GetUtcNow().ToString("yyyy-MM-dd'T'HH:mm:ss.fff'Z'", CultureInfo.InvariantCulture);

    private void TakeLock(SqliteConnection connection)
    {
        var waited = Stopwatch.StartNew();
        using var begin = connection.Command("BEGIN IMMEDIATE; PRAGMA defer_foreign_keys=ON;");
        begin.CommandTimeout = 1;

        for (var said = false; ; said = true)
        {
            try
            {
                begin.ExecuteNonQuery();

                return;
            }
            catch (SqliteException failure) when (failure.SqliteErrorCode is 5 or 6 && waited.Elapsed < Patience)
            {
                if (!said)
                {
                    say("Another program is writing to this register; waiting for it to finish.");
                }
            }
        }
    }
}

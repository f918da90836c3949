using EditionRegister.Store.Sqlite;
using Microsoft.Data.Sqlite;

namespace EditionRegister.Store.Logbook;

/// <summary>
/// Takes the last traces of erased facts out of the file: writes it anew and empties its write-ahead log. Overwriting deleted
/// content alone is not enough, since pages that were rearranged before may still hold an old copy of a cell. A small file
/// beside the register says that a sweep is due until one was complete, whatever happens to the program in between.
/// </summary>
internal sealed class Sweep(string database)
{
    public const string NotYet = "The facts are erased from the register, but their last traces could not be overwritten because another program is using the file. The next deed tries again by itself.";

    private const string Rewritten = "rewritten ";

    private readonly string _mark = database + "-sweep";

    public bool IsDue => File.Exists(_mark);

    /// <summary>To be said under the lock, before the erasing is committed: a killed program leaves the sweep to the next.</summary>
    public void BecomesDue() => Mark(Guid.NewGuid().ToString("N"));

    /// <returns>False when another program was in the way; the sweep stays due.</returns>
    public bool Run(SqliteConnection connection)
    {
        try
        {
            var due = File.ReadAllText(_mark);

            if (!due.StartsWith(Rewritten, StringComparison.Ordinal))
            {
                connection.Run("VACUUM");
                Replace(connection, due, Rewritten + due);
                due = Rewritten + due;
            }

            // Answers 1 in its first column when a reader still needs what lies in the log.
            if (connection.Number("PRAGMA wal_checkpoint(TRUNCATE)") != 0)
            {
                return false;
            }

            Replace(connection, due, null);

            return true;
        }
        catch (Exception inTheWay) when (inTheWay is SqliteException or IOException)
        {
            // Busy, or no room for the new file: what was committed stands, only the traces wait.
            return false;
        }
    }

    /// <summary>Under the lock, so that a sweep which became due meanwhile is not taken for this one.</summary>
    private void Replace(SqliteConnection connection, string expected, string? state)
    {
        connection.Run("BEGIN IMMEDIATE");

        if (IsDue && File.ReadAllText(_mark) == expected)
        {
            Mark(state);
        }

        connection.Run("ROLLBACK");
    }

    private void Mark(string? state)
    {
        if (state is null)
        {
            File.Delete(_mark);
        }
        else
        {
            OwnerOnly.Write(_mark, stream => stream.Write(System.Text.Encoding.ASCII.GetBytes(state)));
        }
    }
}

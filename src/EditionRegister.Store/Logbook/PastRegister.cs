using EditionRegister.Domain;
using EditionRegister.Store.Sqlite;
using Microsoft.Data.Sqlite;

namespace EditionRegister.Store.Logbook;

/// <summary>
/// A register as its logbook had it at the end of a day, folded anew from the entries up to then. It lies in memory alone and is gone when it is disposed
/// of. What was erased since is not in it: its sealed facts are no more.
/// </summary>
public sealed class PastRegister : IDisposable
{
    private readonly SqliteConnection _keeper;

    private PastRegister(SqliteConnection keeper, RegisterStore store, DateOnly day, RecordedEntry last) => (_keeper, Store, Day, Last) = (keeper, store, day, last);

    /// <summary>To be read like any other; it takes no deed.</summary>
    public RegisterStore Store { get; }

    public DateOnly Day { get; }

    /// <summary>The last entry that had been made by then.</summary>
    public RecordedEntry Last { get; }

    public void Dispose() => _keeper.Dispose();

    /// <exception cref="RefusedException">day-before-register, day-not-over, logbook-unreadable.</exception>
    internal static PastRegister Fold(RegisterStore now, Surroundings surroundings, DateOnly day) => now.Read(reader =>
    {
        DayOfEntries days = new(surroundings.Time.LocalTimeZone);
        var last = days.LastOn(reader.Connection, day, DateOnly.FromDateTime(surroundings.Time.GetLocalNow().DateTime));

        // A database in memory lives as long as one connection to it, and is seen by every connection that names it.
        var name = $"Data Source=edreg-{Guid.NewGuid():N};Mode=Memory;Cache=Shared;Pooling=False";
        SqliteConnection keeper = new(name);

        try
        {
            keeper.Open();
            Rebuild.Fold(
                keeper,
                Rebuild.Entries(reader.Connection).TakeWhile(entry => entry.N <= last.N),
                Rebuild.SealedFacts(reader.Connection).TakeWhile(facts => facts.N <= last.N).ToLookup(facts => facts.N));

            return new PastRegister(keeper, new RegisterStore(now.Folder, surroundings, () => Open(name)), day, last);
        }
        catch
        {
            keeper.Dispose();
            throw;
        }
    });

    private static SqliteConnection Open(string name)
    {
        SqliteConnection connection = new(name);
        connection.Open();
        connection.Run("PRAGMA query_only=ON");

        return connection;
    }
}

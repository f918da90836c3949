using Microsoft.Data.Sqlite;

namespace EditionRegister.Store.Sqlite;

/// <summary>Does to a register what someone with a database tool could do behind the logbook's back. For the faulty demo and for tests only.</summary>
public static class Tampering
{
    /// <summary>Runs SQL with guards, foreign keys and checks out of the way; guards it does not name are put back after.</summary>
    public static void Break(RegisterFolder folder, string sql)
    {
        using SqliteConnection connection = new($"Data Source={folder.Database};Pooling=False");
        connection.Open();
        connection.Run("PRAGMA foreign_keys=OFF; PRAGMA ignore_check_constraints=ON;");
        var guards = Schema.Guards.Where(guard => !sql.Contains(guard.Key, StringComparison.Ordinal)).ToList();

        foreach (var guard in guards)
        {
            connection.Run($"DROP TRIGGER {guard.Key}");
        }

        connection.Run(sql);
        connection.Run("PRAGMA writable_schema=OFF");

        foreach (var guard in guards)
        {
            connection.Run(guard.Value);
        }
    }
}

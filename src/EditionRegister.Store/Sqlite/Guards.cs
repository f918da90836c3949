using Microsoft.Data.Sqlite;

namespace EditionRegister.Store.Sqlite;

/// <summary>Keeps the database's guards as they were shipped.</summary>
internal static class Guards
{
    public const string PutBackAgain = "The database's guards had been altered and were put back as shipped. Run `edreg check` to see whether anything else was changed.";

    /// <summary>Puts missing or altered guards back and takes strange triggers away.</summary>
    /// <param name="connection">Inside a transaction.</param>
    /// <param name="form">The form whose guards the file should have.</param>
    /// <returns>Whether there was anything to put right.</returns>
    public static bool PutBack(SqliteConnection connection, int form)
    {
        var shipped = Schema.GuardsOf(form);
        var found = Found(connection);
        var strange = found.Keys.Where(name => !shipped.ContainsKey(name) || found[name] != shipped[name]).ToList();
        var missing = shipped.Keys.Where(name => !found.ContainsKey(name) || strange.Contains(name)).ToList();

        foreach (var name in strange)
        {
            connection.Run($"DROP TRIGGER \"{name.Replace("\"", "\"\"", StringComparison.Ordinal)}\"");
        }

        foreach (var name in missing)
        {
            connection.Run(shipped[name]);
        }

        return strange.Count + missing.Count > 0;
    }

    private static Dictionary<string, string> Found(SqliteConnection connection)
    {
        Dictionary<string, string> found = new(StringComparer.Ordinal);
        using var command = connection.Command("SELECT name, sql FROM sqlite_master WHERE type = 'trigger'");
        using var reader = command.ExecuteReader();

        while (reader.Read())
        {
            found[reader.GetString(0)] = reader.GetString(1);
        }

        return found;
    }
}

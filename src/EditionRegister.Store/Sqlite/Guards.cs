using Microsoft.Data.Sqlite;

namespace EditionRegister.Store.Sqlite;

/// <summary>Keeps the database's guards as they were shipped.</summary>
internal static class Guards
{
    /// <summary>Puts missing or altered guards back, takes strange triggers away, and says so.</summary>
    public static void PutBack(SqliteConnection connection, Action<string> say)
    {
        var found = Found(connection);
        var strange = found.Keys.Where(name => !Schema.Guards.ContainsKey(name) || found[name] != Schema.Guards[name]).ToList();
        var missing = Schema.Guards.Keys.Where(name => !found.ContainsKey(name) || strange.Contains(name)).ToList();

        foreach (var name in strange)
        {
            connection.Run($"DROP TRIGGER \"{name.Replace("\"", "\"\"", StringComparison.Ordinal)}\"");
        }

        foreach (var name in missing)
        {
            connection.Run(Schema.Guards[name]);
        }

        if (strange.Count + missing.Count > 0)
        {
            say("The database's guards had been altered and were put back as shipped. Run `edreg check` to see whether anything else was changed.");
        }
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

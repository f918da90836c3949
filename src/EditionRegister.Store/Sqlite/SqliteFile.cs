using EditionRegister.Domain;
using Microsoft.Data.Sqlite;

namespace EditionRegister.Store.Sqlite;

/// <summary>Opens the register's database with the settings every connection must have.</summary>
internal static class SqliteFile
{
    /// <summary>"EdRe": tells our file from another program's (PRAGMA application_id).</summary>
    public const int ApplicationId = 0x45645265;

    private const string Always = "PRAGMA foreign_keys=ON; PRAGMA secure_delete=ON; PRAGMA recursive_triggers=ON;";

    public static SqliteConnection OpenToRead(string path)
    {
        var connection = Open(path, "ReadOnly");
        connection.Run("PRAGMA query_only=ON; PRAGMA foreign_keys=ON;");

        return connection;
    }

    public static SqliteConnection OpenToWrite(string path)
    {
        var connection = Open(path, "ReadWrite");
        connection.Run(Always + "PRAGMA synchronous=FULL;");

        return connection;
    }

    private static SqliteConnection Open(string path, string mode)
    {
        if (!File.Exists(path))
        {
            throw SqliteFailures.NotThere(path);
        }

        SqliteConnection connection = new(Settings(path, mode));

        try
        {
            connection.Open();
            Recognise(connection, path);

            return connection;
        }
        catch (SqliteException failure)
        {
            connection.Dispose();
            throw SqliteFailures.Explain(failure, path);
        }
        catch (RefusedException)
        {
            connection.Dispose();
            throw;
        }
    }

    // Put together by hand: the builder made for it takes longer than opening the file.
    private static string Settings(string path, string mode) =>
        $"Data Source=\"{path.Replace("\"", "\"\"", StringComparison.Ordinal)}\";Mode={mode};Pooling=False;Default Timeout=10";

    /// <exception cref="RefusedException">register-cannot-open or register-newer.</exception>
    public static void Recognise(SqliteConnection connection, string path)
    {
        if (connection.Number("PRAGMA application_id") != ApplicationId)
        {
            throw SqliteFailures.NotOurs(path);
        }

        var schema = connection.Number("PRAGMA user_version");

        if (schema > Schema.Newest)
        {
            throw SqliteFailures.Newer(path, schema);
        }
    }
}

using Microsoft.Data.Sqlite;

namespace EditionRegister.Store.Sqlite;

/// <summary>A new register file, made beside its place and renamed into it: it stands there whole, or not at all.</summary>
internal static class FreshFile
{
    /// <param name="path">Where the file shall stand; nothing may stand there yet.</param>
    /// <param name="fill">Given the path beside it, makes everything.</param>
    public static void Make(string path, Action<string> fill)
    {
        OwnerOnly.MakeFolder(Path.GetDirectoryName(Path.GetFullPath(path))!);
        var beside = path + ".part";
        Clear(beside);

        try
        {
            OwnerOnly.Make(beside).Dispose();
            fill(beside);
            File.Move(beside, path);
        }
        finally
        {
            Clear(beside);
        }
    }

    /// <summary>Opens an empty file of ours to be filled, with the settings that stay with the file.</summary>
    public static SqliteConnection Open(string path)
    {
        SqliteConnection connection = new(new SqliteConnectionStringBuilder { DataSource = path, Pooling = false }.ToString());
        connection.Open();
        connection.Run("PRAGMA journal_mode=WAL; PRAGMA secure_delete=ON;");
        connection.Run($"PRAGMA application_id={SqliteFile.ApplicationId}");
        Schema.SayForm(connection, Schema.Newest);

        return connection;
    }

    // A write-ahead log left behind by a killed program belongs to a file that is no more.
    private static void Clear(string beside)
    {
        foreach (var ending in new[] { "", "-wal", "-shm" })
        {
            File.Delete(beside + ending);
        }
    }
}

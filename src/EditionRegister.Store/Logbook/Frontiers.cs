using EditionRegister.Store.Proof;
using EditionRegister.Store.Sqlite;
using Microsoft.Data.Sqlite;

namespace EditionRegister.Store.Logbook;

/// <summary>Keeps the hash tree's frontier in its table between deeds.</summary>
internal static class Frontiers
{
    public static List<Subtree> Read(SqliteConnection connection)
    {
        List<Subtree> subtrees = [];
        using var command = connection.Command("SELECT level, hash FROM frontier ORDER BY level DESC");
        using var reader = command.ExecuteReader();

        while (reader.Read())
        {
            subtrees.Add(new Subtree(reader.GetInt32(0), reader.GetFieldValue<byte[]>(1)));
        }

        return subtrees;
    }

    public static void Write(SqliteConnection connection, Frontier frontier)
    {
        connection.Run("DELETE FROM frontier");

        foreach (var subtree in frontier.Subtrees)
        {
            connection.Run("INSERT INTO frontier (level, hash) VALUES (@1, @2)", subtree.Level, subtree.Hash);
        }
    }
}

using EditionRegister.Domain;
using EditionRegister.Store.Proof;
using EditionRegister.Store.Sqlite;
using Microsoft.Data.Sqlite;

namespace EditionRegister.Store.Logbook;

/// <summary>Keeps the hash tree's frontier in its table between deeds.</summary>
internal static class Frontiers
{
    /// <exception cref="RefusedException">register-damaged: what stands there is no frontier.</exception>
    public static Frontier Load(SqliteConnection connection)
    {
        try
        {
            return Frontier.Load(Read(connection));
        }
        catch (Exception damage) when (damage is ArgumentException or InvalidCastException or InvalidOperationException or OverflowException)
        {
            throw new RefusedException("register-damaged", "The logbook's hash tree is damaged, so no entry can be added. Nothing was changed. Run `edreg check`, and go on from the newest copy in the backups folder.");
        }
    }

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

using EditionRegister.Store.Proof;
using EditionRegister.Store.Sqlite;
using Microsoft.Data.Sqlite;

namespace EditionRegister.Store.Integrity;

/// <summary>The hash tree's frontier as found in the file, damaged or not.</summary>
internal static class SavedFrontier
{
    public static bool Agrees(SqliteConnection connection, Frontier due)
    {
        var saved = Read(connection);

        return saved.Count == due.Subtrees.Count
            && saved.Zip(due.Subtrees).All(pair => pair.First.Level == pair.Second.Level && pair.First.Hash.AsSpan().SequenceEqual(pair.Second.Hash));
    }

    private static List<Subtree> Read(SqliteConnection connection)
    {
        List<Subtree> saved = [];
        using var command = connection.Command("SELECT level, hash FROM frontier ORDER BY level DESC");
        using var reader = command.ExecuteReader();

        while (reader.Read())
        {
            saved.Add(new Subtree((int)Math.Clamp(reader.GetInt64(0), int.MinValue, int.MaxValue), reader.BytesOrNone(1)));
        }

        return saved;
    }
}

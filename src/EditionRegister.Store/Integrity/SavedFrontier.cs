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
        var agrees = saved.Count == due.Subtrees.Count;

        for (var i = 0; agrees && i < saved.Count; i++)
        {
            agrees = saved[i].Level == due.Subtrees[i].Level && saved[i].Hash.AsSpan().SequenceEqual(due.Subtrees[i].Hash);
        }

        return agrees;
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

using EditionRegister.Store.Proof;
using EditionRegister.Store.Sqlite;
using Microsoft.Data.Sqlite;

namespace EditionRegister.Store.Logbook;

/// <summary>Puts an entry and its sealed facts into their tables. Leaf and head follow from the bytes.</summary>
internal static class LogbookRow
{
    public static void Insert(SqliteConnection connection, Frontier frontier, EntryHead entry, byte[] body)
    {
        var leaf = MerkleTree.LeafHash(body);
        frontier.Append(leaf);
        connection.Run(
            "INSERT INTO logbook (n, at, root, batch, deed, body, leaf, head) VALUES (@1, @2, @3, @4, @5, @6, @7, @8)",
            entry.N, entry.At, entry.Root, entry.Batch, entry.Deed, body, leaf, frontier.Root());
    }

    public static void InsertSealed(SqliteConnection connection, long n, SealedFacts facts) =>
        connection.Run("INSERT INTO sealed (n, i, salt, body) VALUES (@1, @2, @3, @4)", n, facts.Index, facts.Salt, facts.Body);
}

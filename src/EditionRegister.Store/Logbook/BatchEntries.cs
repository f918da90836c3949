using EditionRegister.Domain.Facts;
using EditionRegister.Store.Sqlite;
using Microsoft.Data.Sqlite;

namespace EditionRegister.Store.Logbook;

/// <summary>A row that a batch made, and whether anything has written it since.</summary>
public sealed record RowMade(string Root, string Table, long Id, bool IsAsMade);

/// <summary>Reads back what a batch made, so that it can be undone.</summary>
internal static class BatchEntries
{
    /// <summary>Rows the batch made, in the order in which they were made; the batch's own row and the codes, which stay for ever, are left out.</summary>
    public static IReadOnlyList<RowMade> RowsMade(SqliteConnection connection, long batch)
    {
        List<RowMade> made = [];
        EntryReader entry = new();
        using var command = connection.Command("SELECT n, root, body FROM logbook WHERE batch = @1 ORDER BY n", batch);
        using var reader = command.ExecuteReader();

        while (reader.Read())
        {
            entry.Read(reader.GetFieldValue<byte[]>(2));

            foreach (var row in entry.Sets.Where(row => row.Table.Name is not ("batch" or "code" or "matrix_code")))
            {
                made.Add(new RowMade(reader.GetString(1), row.Table.Name, row.Id, IsAsMade(connection, row.Table, row.Id, reader.GetInt64(0))));
            }
        }

        return made;
    }

    private static bool IsAsMade(SqliteConnection connection, FactTable table, long id, long n) =>
        connection.Number($"SELECT v FROM {table.Name} WHERE id = @1", id) == n;
}

using System.Globalization;
using System.Text;
using EditionRegister.Domain.Facts;
using EditionRegister.Store.Sqlite;
using Microsoft.Data.Sqlite;

namespace EditionRegister.Store.Logbook;

/// <summary>Finds what was ever sealed about a row.</summary>
internal static class Erasure
{
    /// <summary>Every sealed row about <paramref name="row"/>: its body begins with the row's name, in canonical form.</summary>
    public static IEnumerable<SealedName> SealedRowsOf(SqliteConnection connection, RowName row)
    {
        var start = Encoding.UTF8.GetBytes(string.Create(CultureInfo.InvariantCulture, $"[\"{row.Table}\",{row.Id},"));
        List<SealedName> found = [];
        using var command = connection.Command("SELECT n, i FROM sealed WHERE substr(body, 1, length(@1)) = @1 ORDER BY n, i", start);
        using var reader = command.ExecuteReader();

        while (reader.Read())
        {
            found.Add(new SealedName(reader.GetInt64(0), reader.GetInt32(1)));
        }

        return found;
    }
}

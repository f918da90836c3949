using System.Globalization;
using EditionRegister.Domain.Codes;
using EditionRegister.Domain.Facts;
using EditionRegister.Domain.Integrity;
using EditionRegister.Store.Logbook;
using EditionRegister.Store.Sqlite;
using Microsoft.Data.Sqlite;

namespace EditionRegister.Store.Integrity;

/// <summary>Holds the tables against the folded logbook, both ways: rows that differ, rows too many, rows missing.</summary>
internal static class TableComparison
{
    /// <summary>A register of an older form is compared as it is: it has none of the tables that came later.</summary>
    public static IEnumerable<Finding> Compare(SqliteConnection connection, FoldedTables folded)
    {
        var form = Schema.FormOf(connection);
        var tables = FactCatalogue.Tables.Where(table => table.Since <= form).ToList();

        return tables.SelectMany(table => Compare(connection, form, table, folded.Of(table)))
            .Concat(tables.SelectMany(table => HighestId(connection, table, folded.Highest(table))));
    }

    /// <summary>The next row's id comes from here; were it lower, an id the logbook speaks of would be given again.</summary>
    private static IEnumerable<Finding> HighestId(SqliteConnection connection, FactTable table, long due)
    {
        var said = connection.Number("SELECT seq FROM sqlite_sequence WHERE name = @1", table.Name);

        if (table.Name != "register" && said != due)
        {
            yield return FileRule.TablesAgreeWithLogbook.Broken(
                new Subject(table.Name, due, table.Name),
                string.Create(CultureInfo.InvariantCulture, $"The table {table.Name} says that its highest id so far is {said}; the logbook says {due}."));
        }
    }

    private static IEnumerable<Finding> Compare(SqliteConnection connection, int form, FactTable table, Dictionary<long, FoldedRow> folded)
    {
        using var command = connection.Command($"SELECT id, v, {string.Join(", ", table.Facts.Select(fact => fact.Since <= form ? fact.Name : "NULL"))} FROM {table.Name}");
        using var reader = command.ExecuteReader();

        while (reader.Read())
        {
            var id = reader.GetInt64(0);

            if (!folded.Remove(id, out var row))
            {
                yield return Broken(table, id, CodeAt(reader, table), "stands in its table, but no entry of the logbook made it.");
                continue;
            }

            foreach (var difference in Differences(reader, table, row))
            {
                yield return Broken(table, id, CodeOf(table, row), difference);
            }
        }

        if (folded.Count > 0)
        {
            foreach (var (id, row) in folded.OrderBy(row => row.Key))
            {
                yield return Broken(table, id, CodeOf(table, row), "is missing from its table; the logbook says it is there.");
            }
        }
    }

    private static IEnumerable<string> Differences(SqliteDataReader reader, FactTable table, FoldedRow row)
    {
        if (reader.NumberOrNull(1) is not { } v)
        {
            yield return string.Create(CultureInfo.InvariantCulture, $"does not say which entry wrote it last; the logbook says entry {row.V}.");
        }
        else if (v != row.V)
        {
            yield return string.Create(CultureInfo.InvariantCulture, $"says that entry {v} wrote it last; the logbook says entry {row.V}.");
        }

        for (var place = 0; place < table.Facts.Count; place++)
        {
            var fact = table.Facts[place];
            var said = reader.ValueOrNull(place + 2);
            var due = fact.Keeping == Keeping.Derived ? DerivedFacts.Of(fact, source => row.Values[table.PlaceOf(source)].Text) : row.Values[place];

            if (said != due)
            {
                yield return said is null
                    ? $"has something in {fact.Name} that is neither a whole number nor a text; the logbook says “{due}”."
                    : said.Value.IsNull ? $"has nothing in {fact.Name}; the logbook says “{due}”."
                    : $"has {fact.Name} “{said}”; the logbook says {(due.IsNull ? "nothing" : $"“{due}”")}.";
            }
        }
    }

    /// <summary>A sheet is found by its code, in a drawer as on a list; the logbook's is the one that stands on it.</summary>
    private static string? CodeOf(FactTable table, FoldedRow row) => table.Name == "impression" ? row.Values[table.PlaceOf("code")].Text : null;

    private static string? CodeAt(SqliteDataReader reader, FactTable table) =>
        table.Name == "impression" ? reader.ValueOrNull(table.PlaceOf("code") + 2)?.Text : null;

    private static Finding Broken(FactTable table, long id, string? code, string what)
    {
        var shown = RegisterCode.TryParse(code, out var parsed) ? parsed.ToString() : code;
        var name = string.Create(CultureInfo.InvariantCulture, $"{table.Name.Replace('_', ' ')} {id}{(shown is null ? "" : $" ({shown})")}");

        return FileRule.TablesAgreeWithLogbook.Broken(new Subject(table.Name, id, name), $"{char.ToUpperInvariant(name[0])}{name[1..]} {what}");
    }
}

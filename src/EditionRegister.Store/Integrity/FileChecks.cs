using System.Globalization;
using EditionRegister.Domain.Integrity;
using EditionRegister.Store.Sqlite;
using Microsoft.Data.Sqlite;

namespace EditionRegister.Store.Integrity;

/// <summary>Everything that can be said of the file without knowing what a print is.</summary>
internal static class FileChecks
{
    public static IEnumerable<Finding> Run(SqliteConnection connection) =>
        Damage.Told("the file", connection.DataSource, () => Sound(connection))
            .Concat(Damage.Told("its schema", connection.DataSource, () => AsShipped(connection)))
            .Concat(Damage.Told("the logbook and its tables", connection.DataSource, () => Folded(connection)));

    private static IEnumerable<Finding> Folded(SqliteConnection connection)
    {
        Replay replay = new(connection);
        replay.Run();

        foreach (var finding in replay.Findings.Concat(TableComparison.Compare(connection, replay.Tables)))
        {
            yield return finding;
        }
    }

    private static IEnumerable<Finding> Sound(SqliteConnection connection)
    {
        // Not quick_check: it leaves out what the indexes hold, and a code is looked up in an index.
        using var command = connection.Command("PRAGMA integrity_check");
        using var reader = command.ExecuteReader();

        while (reader.Read())
        {
            if (reader.GetString(0) is not "ok" and var fault)
            {
                yield return FileRule.FileIsSound.Broken(new Subject("file", 1, "the file"), $"The database reports: {fault}.");
            }
        }
    }

    private static IEnumerable<Finding> AsShipped(SqliteConnection connection)
    {
        var shipped = Schema.AsShipped(Schema.FormOf(connection));
        var found = Schema.AsFound(connection);

        foreach (var name in shipped.Keys.Union(found.Keys).Where(name => shipped.GetValueOrDefault(name) != found.GetValueOrDefault(name)).Order(StringComparer.Ordinal))
        {
            var what = !found.ContainsKey(name) ? "is missing" : shipped.ContainsKey(name) ? "was altered" : "is not ours";

            yield return FileRule.SchemaIsAsShipped.Broken(new Subject("schema", 1, name), $"The {name} {what}.");
        }

        var form = connection.Number("PRAGMA user_version");

        if (form != connection.Number("SELECT schema FROM register"))
        {
            yield return FileRule.SchemaIsAsShipped.Broken(
                new Subject("schema", 1, "the form of the file"),
                string.Create(CultureInfo.InvariantCulture, $"The file says it has form {form}; the register says otherwise."));
        }
    }
}

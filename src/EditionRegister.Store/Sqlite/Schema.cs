using System.Globalization;
using System.Text;
using EditionRegister.Domain.Facts;
using Microsoft.Data.Sqlite;

namespace EditionRegister.Store.Sqlite;

/// <summary>The shipped schema: numbered scripts that make the tables, and the guards that watch over them.</summary>
internal static class Schema
{
    /// <summary>The form of register this program writes.</summary>
    public const int Newest = 4;

    // A form whose tables need no guard of their own ships none but those every table has.
    private static readonly (int Since, string Script)[] OfTheirOwn = [(1, "0001.guards.sql"), (3, "0003.guards.sql")];

    private static readonly Dictionary<string, string>[] GuardsByForm = [.. Enumerable.Range(1, Newest).Select(ReadGuards)];

    public static string Script(int number) => Resource(string.Create(CultureInfo.InvariantCulture, $"{number:0000}.sql"));

    /// <summary>The text of every guard of the newest form, by name.</summary>
    public static IReadOnlyDictionary<string, string> Guards => GuardsOf(Newest);

    /// <summary>The text of every guard of a form, by name.</summary>
    public static IReadOnlyDictionary<string, string> GuardsOf(int form) => GuardsByForm[form - 1];

    /// <summary>The form the register says it has, which its logbook can prove; the newest where it says none that ever was.</summary>
    public static int FormOf(SqliteConnection connection)
    {
        var registers = connection.Number("SELECT count(*) FROM sqlite_master WHERE type = 'table' AND name = 'register'");
        var said = registers == 1 ? connection.Number("SELECT schema FROM register WHERE id = 1") : 0;

        return said is >= 1 and <= Newest ? (int)said : Newest;
    }

    /// <summary>Makes all tables and guards in an empty database. Call inside a transaction.</summary>
    public static void Make(SqliteConnection connection)
    {
        MakeTables(connection, 1, Newest);
        MakeGuards(connection, Newest);
    }

    /// <summary>Makes what the scripts from one form to another add.</summary>
    public static void MakeTables(SqliteConnection connection, int first, int last)
    {
        for (var number = first; number <= last; number++)
        {
            connection.Run(Script(number));
        }
    }

    public static void MakeGuards(SqliteConnection connection, int form)
    {
        foreach (var guard in GuardsOf(form).Values)
        {
            connection.Run(guard);
        }
    }

    public static void SayForm(SqliteConnection connection, int form) =>
        connection.Run(string.Create(CultureInfo.InvariantCulture, $"PRAGMA user_version={form}"));

    /// <summary>Everything the scripts make up to a form, by kind and name. A database keeps what it was told, so this is the scripts' own text.</summary>
    public static IReadOnlyDictionary<string, string> AsShipped(int form)
    {
        // Made by the database itself, for tables that never give an id twice.
        Dictionary<string, string> shipped = new(StringComparer.Ordinal) { ["table sqlite_sequence"] = "CREATE TABLE sqlite_sequence(name,seq)" };

        foreach (var statement in Enumerable.Range(1, form).SelectMany(number => Statements(Script(number), ";")).Concat(GuardsOf(form).Values))
        {
            if (AddedColumn.TryRead(statement, out var added))
            {
                shipped[$"table {added.Table}"] = added.In(shipped[$"table {added.Table}"]);
            }
            else
            {
                shipped.Add($"{KindOf(statement)} {NameOf(statement)}", statement);
            }
        }

        return shipped;
    }

    public static Dictionary<string, string> AsFound(SqliteConnection connection)
    {
        Dictionary<string, string> found = new(StringComparer.Ordinal);
        using var command = connection.Command("SELECT type || ' ' || name, sql FROM sqlite_master WHERE sql IS NOT NULL");
        using var reader = command.ExecuteReader();

        while (reader.Read())
        {
            found[reader.GetString(0)] = reader.GetString(1);
        }

        return found;
    }

    private static Dictionary<string, string> ReadGuards(int form) =>
        OfTheirOwn.Where(own => own.Since <= form).SelectMany(own => Statements(Resource(own.Script), "END;")).Concat(EntryGuards(form)).ToDictionary(NameOf, StringComparer.Ordinal);

    /// <summary>A row changed by hand, without an entry to answer for it, is refused: its v must name the newest entry.</summary>
    private static IEnumerable<string> EntryGuards(int form) =>
        FactCatalogue.Tables.Where(table => table.Since <= form)
            .SelectMany(table => new[] { EntryGuard(table, "made", "INSERT"), EntryGuard(table, "changed", "UPDATE") });

    private static string EntryGuard(FactTable table, string moment, string when) => $"""
        CREATE TRIGGER {table.Name}_names_its_entry_when_{moment} BEFORE {when} ON {table.Name}
        WHEN NEW.v <> (SELECT max(n) FROM logbook)
        BEGIN SELECT RAISE(ABORT, 'guard: a row names the entry that last wrote it'); END
        """;

    /// <summary>The statements of a script, without their last semicolon. They end where a line does: triggers hold semicolons of their own.</summary>
    private static IEnumerable<string> Statements(string script, string end)
    {
        StringBuilder statement = new();

        foreach (var line in script.Split('\n').Select(line => line.TrimEnd()))
        {
            if (statement.Length == 0 && (line.Length == 0 || line.StartsWith("--", StringComparison.Ordinal)))
            {
                continue;
            }

            statement.Append(statement.Length == 0 ? "" : "\n").Append(line);

            if (line.EndsWith(end, StringComparison.Ordinal))
            {
                yield return statement.ToString()[..^1];
                statement.Clear();
            }
        }
    }

    // CREATE TABLE person (..., CREATE UNIQUE INDEX batch_file ON ..., CREATE TRIGGER logbook_has_no_gap ...
    private static string[] Words(string statement) => statement.Replace("CREATE UNIQUE ", "CREATE ", StringComparison.Ordinal).Split(' ', 4);

    private static string KindOf(string statement) => Words(statement)[1].ToLowerInvariant();

    private static string NameOf(string statement) => Words(statement)[2];

    private static string Resource(string name)
    {
        using var stream = typeof(Schema).Assembly.GetManifestResourceStream($"Schema/{name}")
            ?? throw new InvalidOperationException($"The program ships no schema {name}.");
        using StreamReader reader = new(stream, Encoding.UTF8);

        return reader.ReadToEnd().Replace("\r\n", "\n", StringComparison.Ordinal);
    }
}

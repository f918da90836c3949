using System.Runtime.CompilerServices;
using System.Text.Json;
using EditionRegister.Domain.Facts;
using EditionRegister.Store.Logbook;
using EditionRegister.Store.Proof;
using EditionRegister.Store.Sqlite;
using Microsoft.Data.Sqlite;

namespace EditionRegister.Store.Tests.Logbook;

/// <summary>A logbook kept as a file, one JSON object a line, and what the tables said when it was written.</summary>
internal static class LogbookFixture
{
    private static readonly JsonSerializerOptions Form = new() { DefaultIgnoreCondition = System.Text.Json.Serialization.JsonIgnoreCondition.WhenWritingNull };

    public static string Path(string name, [CallerFilePath] string here = "") =>
        System.IO.Path.Combine(System.IO.Path.GetDirectoryName(here)!, "..", "fixtures", name);

    public static string Write(SqliteConnection connection)
    {
        var entries = Rebuild.Entries(connection).Select(entry => new Line(entry.N, null, null, entry.Body, Head(connection, entry.N)));
        var facts = Rebuild.SealedFacts(connection).Select(one => new Line(one.N, one.Index, one.Salt, one.Body, null));

        return string.Concat(entries.Concat(facts).Select(line => JsonSerializer.Serialize(line, Form) + "\n"));
    }

    public static (List<StoredEntry> Entries, List<StoredSealedFacts> Sealed, string Head) Read(string text)
    {
        var lines = text.Split('\n', StringSplitOptions.RemoveEmptyEntries).Select(line => JsonSerializer.Deserialize<Line>(line)!).ToList();

        return (
            [.. lines.Where(line => line.Salt is null).Select(line => new StoredEntry(line.N, line.Body))],
            [.. lines.Where(line => line.Salt is not null).Select(line => new StoredSealedFacts(line.N, line.I!.Value, line.Salt!, line.Body))],
            lines.Last(line => line.Head is not null).Head!);
    }

    /// <summary>Every register table in canonical form. Derived facts stay out: how text is folded for searching may be bettered.</summary>
    public static string Content(SqliteConnection connection) =>
        string.Concat(FactCatalogue.Tables.Where(table => table.Since <= Schema.FormOf(connection)).SelectMany(table => Rows(connection, table, Schema.FormOf(connection))).Select(row => row + "\n"));

    private static IEnumerable<string> Rows(SqliteConnection connection, FactTable table, int form)
    {
        var facts = table.Facts.Where(fact => fact.Keeping != Keeping.Derived && fact.Since <= form).Select(fact => fact.Name).ToList();
        using var command = connection.Command($"SELECT id, v, {string.Join(", ", facts)} FROM {table.Name} ORDER BY id");
        using var reader = command.ExecuteReader();
        CanonicalWriter row = new();

        while (reader.Read())
        {
            row.Clear();
            row.StartArray();
            row.Value(table.Name);
            row.Value(reader.GetInt64(0));
            row.Value(reader.GetInt64(1));
            row.StartObject();

            for (var i = 0; i < facts.Count; i++)
            {
                row.Name(facts[i]);
                Write(row, reader.GetValue(i + 2));
            }

            row.EndObject();
            row.EndArray();

            yield return System.Text.Encoding.UTF8.GetString(row.WrittenSpan);
        }
    }

    private static void Write(CanonicalWriter row, object value)
    {
        switch (value)
        {
            case long number: row.Value(number); break;
            case string text: row.Value(text); break;
            default: row.Null(); break;
        }
    }

    private static string Head(SqliteConnection connection, long n) => connection.Text("SELECT lower(hex(head)) FROM logbook WHERE n = @1", n)!;

    /// <summary>An entry with its head, or sealed facts with their salt; bytes in base64.</summary>
    private sealed record Line(long N, int? I, byte[]? Salt, byte[] Body, string? Head);
}

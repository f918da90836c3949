using EditionRegister.Store.Sqlite;
using Microsoft.Data.Sqlite;

namespace EditionRegister.Store.Tests;

/// <summary>All a register file says, one line a row, byte for byte and with each value's kind: what two equal registers have in common.</summary>
internal static class Dump
{
    public static string Of(string database)
    {
        using SqliteConnection connection = new($"Data Source={database};Mode=ReadOnly;Pooling=False");
        connection.Open();

        return Of(connection);
    }

    public static string Of(SqliteConnection connection) =>
        string.Join('\n', Tables(connection).SelectMany(table => Rows(connection, table)));

    public static string Of(SqliteConnection connection, string table) => string.Join('\n', Rows(connection, table));

    public static List<string> Tables(SqliteConnection connection) =>
        Column(connection, "SELECT name FROM sqlite_master WHERE type = 'table' ORDER BY name");

    public static List<string> Columns(SqliteConnection connection, string table) =>
        Column(connection, $"SELECT name FROM pragma_table_info('{table}') ORDER BY cid");

    public static List<string> ColumnsOf(Integrity.TamperedFile file, string table)
    {
        using SqliteConnection connection = new($"Data Source={file.Database};Mode=ReadOnly;Pooling=False");
        connection.Open();

        return Columns(connection, table);
    }

    private static IEnumerable<string> Rows(SqliteConnection connection, string table) => Rows(connection, table, Columns(connection, table));

    public static IEnumerable<string> Rows(SqliteConnection connection, string table, List<string> columns)
    {
        var values = string.Join(" || ' ' || ", columns.Select(column => $"'{column}=' || typeof({column}) || ':' || hex(CAST({column} AS BLOB))"));

        return Column(connection, $"SELECT {values} FROM {table} ORDER BY 1").Select(row => $"{table}: {row}");
    }

    public static List<string> Column(SqliteConnection connection, string sql)
    {
        List<string> values = [];
        using var command = connection.Command(sql);
        using var reader = command.ExecuteReader();

        while (reader.Read())
        {
            values.Add(reader.GetString(0));
        }

        return values;
    }
}

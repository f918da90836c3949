using EditionRegister.Store.Sqlite;
using EditionRegister.Store.Tests.Histories;
using Microsoft.Data.Sqlite;

namespace EditionRegister.Store.Tests.Integrity;

public sealed class TamperingTests(TamperingTests.Once once) : IClassFixture<TamperingTests.Once>
{
    private readonly TamperedFile _file = once.File;

    [Fact]
    public void The_file_is_clean_before_anyone_lays_hands_on_it_and_after_a_change_that_changes_nothing()
    {
        using (var connection = _file.OpenLoose())
        {
            connection.Run("UPDATE impression SET note = note; UPDATE sealed SET body = body;");
            _file.Hide(connection);
        }

        Assert.Empty(_file.Findings());
    }

    [Fact]
    public void One_value_changed_in_any_column_of_any_table_is_found()
    {
        List<string> missed = [];
        Draw draw = new("columns");

        foreach (var (table, column) in Columns())
        {
            var changes = Rows(table, column, draw).SelectMany(row => Changes(table, column, row)).ToList();

            // Unique columns refuse a few of them; at least one must get through, or nothing was tried.
            var made = changes.Count(change => IsMade(table, change, missed));
            Assert.True(made > 0, $"No change of {table}.{column} could be made.");
        }

        Assert.Empty(missed);
    }

    [Fact]
    public void Bytes_that_only_read_like_the_text_they_replace_are_found()
    {
        using (var connection = _file.OpenLoose())
        {
            // U+FFFD is a character like any other, and also what a reader shows for broken UTF-8: here a cut-off U+1F3A8.
            Assert.NotEqual(0, connection.Run(
                "UPDATE place SET name = CAST(unhex(replace(hex(name), 'EFBFBD', 'F09F8E')) AS TEXT) WHERE hex(name) LIKE '%EFBFBD%'"));
            _file.Hide(connection);
        }

        Assert.Contains(_file.Findings(), finding => finding.Rule == "TablesAgreeWithLogbook" && finding.Subject.Kind == "place");
    }

    [Fact]
    public void One_row_deleted_from_any_table_is_found()
    {
        List<string> missed = [];

        foreach (var table in _file.Tables)
        {
            foreach (var row in Rows(table, Dump.ColumnsOf(_file, table)[0], new Draw(table)))
            {
                Assert.True(IsMade(table, $"DELETE FROM {table} WHERE {row}", missed), table);
            }
        }

        Assert.Empty(missed);
    }

    private IEnumerable<(string Table, string Column)> Columns() =>
        from table in _file.Tables.Append("sqlite_sequence")
        from column in Dump.ColumnsOf(_file, table)
        select (table, column);

    /// <summary>Rows by their keys: where the column is blank, where it is not, and some drawn.</summary>
    private List<string> Rows(string table, string column, Draw draw)
    {
        var key = table switch
        {
            "sealed" => "'n = ' || n || ' AND i = ' || i",
            "logbook" => "'n = ' || n",
            "frontier" => "'level = ' || level",
            _ => "'rowid = ' || rowid",
        };
        _file.Reset();
        using SqliteConnection connection = new($"Data Source={_file.Database};Pooling=False");
        connection.Open();
        var blank = Dump.Column(connection, $"SELECT {key} FROM {table} WHERE {column} IS NULL");
        var filled = Dump.Column(connection, $"SELECT {key} FROM {table} WHERE {column} IS NOT NULL");

        return [.. Some(blank, Depth.Of(1, 2, 9), draw), .. Some(filled, Depth.Of(1, 3, 9), draw)];
    }

    private static IEnumerable<string> Some(List<string> rows, int count, Draw draw) =>
        Enumerable.Range(0, Math.Min(count, rows.Count)).Select(_ => draw.Of(rows)).Distinct();

    private static IEnumerable<string> Changes(string table, string column, string row) =>
        from value in new[]
        {
            // Another value that stands in the same column, as another word of a closed list would.
            $"(SELECT o.{column} FROM {table} o WHERE o.{column} IS NOT {table}.{column} ORDER BY o.{column} LIMIT 1)",
            $"CASE typeof({column}) WHEN 'null' THEN 1 ELSE NULL END",
            $"CASE typeof({column}) WHEN 'integer' THEN {column} + 1 WHEN 'text' THEN {column} || 'x' WHEN 'null' THEN 'x' ELSE substr({column}, 1, length({column}) - 1) END",
            $"CASE typeof({column}) WHEN 'integer' THEN {column} + 0.5 WHEN 'text' THEN {column} || char(0) || 'x' WHEN 'null' THEN x'00' ELSE CAST({column} AS TEXT) END",
            $"CASE typeof({column}) WHEN 'blob' THEN {Flipped(column)} WHEN 'integer' THEN {column} + 1000000 ELSE CAST({column} AS BLOB) END",
        }
        select $"UPDATE {table} SET {column} = {value} WHERE {row}";

    /// <summary>The last bit of a blob's first byte, turned over.</summary>
    private static string Flipped(string column) =>
        $"unhex(substr(hex({column}), 1, 1) || substr('1032547698BADCFE', instr('0123456789ABCDEF', substr(hex({column}), 2, 1)), 1) || substr(hex({column}), 3))";

    /// <summary>Makes the change, hides that it was ever possible, and sees whether check tells.</summary>
    /// <returns>False when even the loosened table refuses, or nothing was changed.</returns>
    private bool IsMade(string table, string change, List<string> missed)
    {
        using (var connection = _file.OpenLoose())
        {
            try
            {
                var before = Dump.Of(connection, table);
                connection.Run(change);

                if (Dump.Of(connection, table) == before)
                {
                    return false;
                }
            }
            catch (SqliteException refused) when (refused.SqliteErrorCode is 19 or 20)
            {
                return false;
            }

            _file.Hide(connection);
        }

        if (_file.Findings().Count == 0)
        {
            missed.Add(change);
        }

        return true;
    }

    public sealed class Once : IDisposable
    {
        internal TamperedFile File { get; } = new();

        public void Dispose() => File.Dispose();
    }
}

using EditionRegister.Domain.Integrity;
using EditionRegister.Store.Sqlite;
using EditionRegister.Store.Tests.Histories;
using Microsoft.Data.Sqlite;

namespace EditionRegister.Store.Tests.Integrity;

/// <summary>
/// A register with a rich history to lay hands on, each time from a fresh copy: any value in any column, with guards, foreign
/// keys, CHECKs, NOT NULL and STRICT out of the way, and afterwards the schema as if nothing had been.
/// </summary>
internal sealed class TamperedFile : IDisposable
{
    private readonly TempRegister _register = new("tampering");
    private readonly TempFolder _folder = new();
    private readonly string _whole;
    private readonly string _loose;
    private readonly string _asItWas;

    public TamperedFile(int deeds = 90)
    {
        var history = new GeneratedHistory(_register.Store, "tampering").Add(deeds);

        // What a deed made another may have undone: a table without a row could not be tried.
        while (HasEmptyTable())
        {
            history.Add(5);
        }

        _register.Store.Write("add-place", writing =>
        {
            var place = writing.On(Domain.Facts.Root.Register).NewId("place");
            writing.On(Domain.Facts.Root.Place(place)).Set("place", place, ("name", "drawer with a torn label: \ufffd"));

            return true;
        });
        _whole = _folder.File("whole.db");
        _loose = _folder.File("loose.db");
        File.Copy(_register.Folder.Database, _whole);
        File.Copy(_register.Folder.Database, _loose);
        using var connection = Open(_loose);
        _asItWas = "PRAGMA writable_schema=ON; DELETE FROM sqlite_master WHERE type = 'trigger';" + string.Concat(Schema.Guards.Select(Guard));

        foreach (var table in Tables)
        {
            var sql = connection.Text("SELECT sql FROM sqlite_master WHERE type = 'table' AND name = @1", table)!;
            _asItWas += $"UPDATE sqlite_master SET sql = {Quoted(sql)} WHERE type = 'table' AND name = '{table}';";
            connection.Run("PRAGMA writable_schema=ON");
            connection.Run("UPDATE sqlite_master SET sql = @1 WHERE type = 'table' AND name = @2", Loosened(sql), table);
        }

        connection.Run("DELETE FROM sqlite_master WHERE type = 'trigger'; PRAGMA writable_schema=RESET;");
    }

    public RegisterStore Store => _register.Store;

    public string Database => _register.Folder.Database;

    /// <summary>Every table that the register's programs write, with those of the logbook.</summary>
    public IReadOnlyList<string> Tables { get; } =
        [.. Domain.Facts.FactCatalogue.Tables.Select(table => table.Name), "logbook", "sealed", "frontier"];

    /// <summary>The file as it was written, to be damaged from outside.</summary>
    public void Reset()
    {
        Clear();
        File.Copy(_whole, Database, overwrite: true);
    }

    /// <summary>Opens a copy with nothing in the way.</summary>
    public SqliteConnection OpenLoose()
    {
        Clear();
        File.Copy(_loose, Database, overwrite: true);

        return Open(Database);
    }

    /// <summary>Puts the schema back as it was, to the letter.</summary>
    public void Hide(SqliteConnection connection) => connection.Run(_asItWas + "PRAGMA writable_schema=RESET;");

    /// <summary>What check finds, with every work read whole.</summary>
    public List<Finding> Findings() => [.. _register.Store.Check(reader =>
    {
        foreach (var work in reader.Works())
        {
            Assert.NotNull(work.Impressions);
        }

        return [];
    })];

    public void Dispose()
    {
        _register.Dispose();
        _folder.Dispose();
    }

    private bool HasEmptyTable()
    {
        using var connection = SqliteFile.OpenToRead(Database);

        return Tables.Any(table => connection.Number($"SELECT count(*) FROM {table}") == 0);
    }

    private static SqliteConnection Open(string path)
    {
        SqliteConnection connection = new($"Data Source={path};Pooling=False");
        connection.Open();
        connection.Run("PRAGMA synchronous=OFF; PRAGMA foreign_keys=OFF; PRAGMA ignore_check_constraints=ON;");

        return connection;
    }

    private static string Loosened(string sql) => sql
        .Replace(" IS NOT NULL", " IS NOT (NULL)", StringComparison.Ordinal)
        .Replace(" NOT NULL", "", StringComparison.Ordinal)
        .Replace(") STRICT, WITHOUT ROWID", ") WITHOUT ROWID", StringComparison.Ordinal)
        .Replace(") STRICT", ")", StringComparison.Ordinal);

    private static string Guard(KeyValuePair<string, string> guard) =>
        $"INSERT INTO sqlite_master (type, name, tbl_name, rootpage, sql) VALUES ('trigger', '{guard.Key}', '{TableOf(guard.Value)}', 0, {Quoted(guard.Value)});";

    private static string TableOf(string guard) => guard.Split(" ON ", 2)[1].Split([' ', '\n'], 2)[0];

    private static string Quoted(string sql) => "'" + sql.Replace("'", "''", StringComparison.Ordinal) + "'";

    private void Clear()
    {
        File.Delete(Database + "-wal");
        File.Delete(Database + "-shm");
    }
}

using Microsoft.Data.Sqlite;
using SQLitePCL;
using static SQLitePCL.raw;

namespace EditionRegister.Store.Lists;

/// <summary>
/// Rows of one statement as SQLite hands them out, for passes over every impression: no row becomes an object. A value of another kind than asked for
/// is turned into one as SQLite does, which never fails.
/// </summary>
internal sealed class RawRows : IDisposable
{
    private readonly sqlite3 _database;
    private readonly sqlite3_stmt _statement;

    /// <exception cref="SqliteException">The statement cannot be prepared.</exception>
    public RawRows(SqliteConnection connection, string sql)
    {
        _database = connection.Handle!;
        SqliteException.ThrowExceptionForRC(sqlite3_prepare_v2(_database, sql, out _statement), _database);
    }

    /// <exception cref="SqliteException">The file cannot be read on.</exception>
    public bool Read()
    {
        var answer = sqlite3_step(_statement);

        if (answer is not (SQLITE_ROW or SQLITE_DONE))
        {
            SqliteException.ThrowExceptionForRC(answer, _database);
        }

        return answer == SQLITE_ROW;
    }

    /// <summary>0 where nothing stands.</summary>
    public long Number(int column) => sqlite3_column_int64(_statement, column);

    public bool IsNull(int column) => sqlite3_column_type(_statement, column) == SQLITE_NULL;

    /// <summary>The UTF-8 of a text, until the next row is read; empty where nothing stands.</summary>
    public ReadOnlySpan<byte> Utf8(int column) => sqlite3_column_blob(_statement, column);

    public void Dispose() => _statement.Dispose();
}

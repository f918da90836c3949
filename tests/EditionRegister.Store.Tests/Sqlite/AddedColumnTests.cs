using EditionRegister.Store.Sqlite;
using Microsoft.Data.Sqlite;

namespace EditionRegister.Store.Tests.Sqlite;

/// <summary>What SQLite itself remembers of a table after ALTER TABLE ADD COLUMN, and what we say it will.</summary>
public sealed class AddedColumnTests
{
    [Theory]
    [InlineData("CREATE TABLE t (\n    a INTEGER PRIMARY KEY,\n    b TEXT NOT NULL\n) STRICT")]
    [InlineData("CREATE TABLE t (\n    a INTEGER,\n    b TEXT,\n    UNIQUE (a, b),\n    CHECK (a > 0)\n) STRICT")]
    [InlineData("CREATE TABLE t (\n    a INTEGER,\n    b TEXT,\n    CHECK (a <> 1),\n    UNIQUE (a)\n)")]
    [InlineData("CREATE TABLE t (a INTEGER, b TEXT, UNIQUE (a))")]
    [InlineData("CREATE TABLE t (a INTEGER, b TEXT , PRIMARY KEY (a)) WITHOUT ROWID")]
    [InlineData("CREATE TABLE t (a INTEGER, b TEXT, CONSTRAINT whole CHECK (a > 1))")]
    [InlineData("CREATE TABLE t (a INTEGER, b INTEGER, foreign key (b) references t (a))")]
    [InlineData("CREATE TABLE t (a INTEGER CHECK (a IN (1, 2, 3)), b TEXT DEFAULT 'x), y, UNIQUE (a)', CHECK (b <> ','))")]
    [InlineData("CREATE TABLE t (a INTEGER, -- it's a comment, UNIQUE (a)\n b TEXT /* , CHECK ( */ , /* then */ UNIQUE (b))")]
    [InlineData("CREATE TABLE t (a INTEGER, \"unique (\" TEXT, [check )] TEXT, `b``,` TEXT)")]
    [InlineData("CREATE TABLE t (a INTEGER, unique_b TEXT, checked TEXT)")]
    [InlineData("CREATE TABLE t (a INTEGER, b TEXT -- the last one\n)")]
    [InlineData("CREATE TABLE t (a INTEGER, b TEXT AS (a || ')') STORED)")]
    [InlineData("CREATE TABLE t(a,b)")]
    public void A_column_added_to_a_table_of_any_shape_stands_where_SQLite_puts_it(string table)
    {
        using SqliteConnection connection = new("Data Source=:memory:");
        connection.Open();
        connection.Run(table);
        var mine = table;

        foreach (var alter in new[] { "ALTER TABLE t ADD COLUMN part TEXT", "ALTER TABLE t ADD COLUMN place INTEGER REFERENCES t (a) ON DELETE RESTRICT", "ALTER TABLE t ADD COLUMN yes TEXT CHECK (yes IN ('yes', 'no'))" })
        {
            connection.Run(alter);
            Assert.True(AddedColumn.TryRead(alter, out var added));
            mine = added.In(mine);

            Assert.Equal(connection.Text("SELECT sql FROM sqlite_master WHERE name = 't'"), mine);
        }
    }

    [Theory]
    [InlineData("CREATE TABLE t (a)")]
    [InlineData("ALTER TABLE t RENAME TO u")]
    public void Nothing_else_is_taken_for_one(string statement) => Assert.False(AddedColumn.TryRead(statement, out _));
}

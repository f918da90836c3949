namespace EditionRegister.Store.Sqlite;

/// <summary>A column that a later script gives to a table made by an earlier one, and what the database then remembers of that table.</summary>
internal readonly record struct AddedColumn(string Table, string Column)
{
    private const string Alter = "ALTER TABLE ";
    private const string Add = " ADD COLUMN ";

    /// <summary>Reads <c>ALTER TABLE matrix ADD COLUMN part TEXT</c>.</summary>
    public static bool TryRead(string statement, out AddedColumn added)
    {
        var column = statement.IndexOf(Add, StringComparison.Ordinal);
        var reads = statement.StartsWith(Alter, StringComparison.Ordinal) && column > 0;
        added = reads ? new AddedColumn(statement[Alter.Length..column], statement[(column + Add.Length)..]) : default;

        return reads;
    }

    /// <summary>SQLite writes an added column behind the last one, before what holds for the whole table; a test holds this against SQLite.</summary>
    public string In(string table)
    {
        var behind = TableText.EndOfColumns(table);

        return $"{table[..behind]}, {Column}{table[behind..]}";
    }
}

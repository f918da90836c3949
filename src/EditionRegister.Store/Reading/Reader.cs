using EditionRegister.Domain.People;
using EditionRegister.Domain.Works;
using EditionRegister.Store.Sqlite;
using Microsoft.Data.Sqlite;

namespace EditionRegister.Store.Reading;

/// <summary>Reads snapshots with raw readers and prepared statements, from one connection and so from one moment.</summary>
public sealed partial class Reader
{
    private readonly Dictionary<string, SqliteCommand> _prepared = new(StringComparer.Ordinal);
    private AddressBook? _book;

    internal Reader(SqliteConnection connection) => Connection = connection;

    internal SqliteConnection Connection { get; }

    /// <summary>Everyone and every place, read once.</summary>
    public AddressBook Book => _book ??= new AddressBook(
        Rows("SELECT id, v, what, name, sort_name, protected, public_name, public_wording, class_code, contact, note, erased FROM person ORDER BY id", [], PersonOf)
            .ToDictionary(person => person.Id),
        Rows("SELECT id, v, name, inside, keeper, note FROM place ORDER BY id", [], PlaceOf).ToDictionary(place => place.Id));

    /// <summary>Forgets what is read once, after the deed under way has changed it.</summary>
    public void Refresh()
    {
        _book = null;
        _ownWords = null;
        _any.Clear();
    }

    /// <summary>The whole work, or null where there is none of that id.</summary>
    public Work? Work(long id) => Rows(WorkSql + " WHERE id = @1", [id], row => WorkOf(row, id)).FirstOrDefault();

    /// <summary>Every work, one at a time.</summary>
    public IEnumerable<Work> Works()
    {
        using var command = Connection.Command(WorkSql + " ORDER BY id");
        using var row = command.ExecuteReader();

        while (row.Read())
        {
            yield return WorkOf(row, row.GetInt64(0));
        }
    }

    public IReadOnlyList<long> WorkIds() => Rows("SELECT id FROM work ORDER BY id", [], row => row.Figure(0));

    /// <summary>The work an impression belongs to and the impression's id, by its code as stored; null where the code is not known.</summary>
    public (long Work, long Impression)? FindCode(string code) =>
        Rows<(long, long)?>(
            "SELECT w.id, i.id FROM impression i JOIN print_run r ON r.id = i.run JOIN work w ON w.id = r.work WHERE i.code = @1",
            [code],
            row => (row.Figure(0), row.Figure(1))).FirstOrDefault();

    /// <summary>To a sheet or to a matrix.</summary>
    public bool CodeWasEverGiven(string code) => Rows(
        $"SELECT 1 FROM code WHERE code = @1{(Has("matrix_code") ? " UNION ALL SELECT 1 FROM matrix_code WHERE code = @1" : "")}", [code], _ => true).Count > 0;

    /// <summary>The sheet a code was given to once, whether or not its row still stands.</summary>
    public long? SheetOfCode(string code) => Rows<long?>("SELECT sheet FROM code WHERE code = @1", [code], row => row.Figure(0)).FirstOrDefault();

    /// <summary>Works of that title, case and accents ignored.</summary>
    public IReadOnlyList<long> WorksTitled(string title) =>
        Rows("SELECT id FROM work WHERE search = @1 ORDER BY id", [Domain.Text.SearchText.Fold(title)], row => row.Figure(0));

    public long? EditionsWork(long edition) => Rows<long?>("SELECT work FROM edition WHERE id = @1", [edition], row => row.Figure(0)).FirstOrDefault();

    /// <summary>The batch that read in a file of these bytes and still stands.</summary>
    public long? BatchOf(string sha256) =>
        Rows<long?>("SELECT id FROM batch WHERE sha256 = @1 AND undone = 'no'", [sha256], row => row.Figure(0)).FirstOrDefault();

    public bool IsDemo() => Rows("SELECT demo FROM register", [], row => row.Word(0)).FirstOrDefault() == "yes";

    private static Person PersonOf(SqliteDataReader row) => new(
        row.Figure(0), row.Figure(1), row.Word(2), row.TextOrNull(3), row.TextOrNull(4), row.Word(5), row.Word(6),
        row.TextOrNull(7), row.TextOrNull(8), row.TextOrNull(9), row.TextOrNull(10), row.Word(11));

    private static Place PlaceOf(SqliteDataReader row) => new(
        row.Figure(0), row.Figure(1), row.TextOrNull(2), row.NumberOrNull(3), row.NumberOrNull(4), row.TextOrNull(5));

    private List<T> Rows<T>(string sql, ReadOnlySpan<object> parameters, Func<SqliteDataReader, T> read)
    {
        List<T> rows = [];
        using var reader = Query(sql, parameters);

        while (reader.Read())
        {
            rows.Add(read(reader));
        }

        return rows;
    }

    /// <summary>The rows below what their first column points at.</summary>
    private RowsBelow<T> RowsBelow<T>(string sql, long parameter, Func<SqliteDataReader, T> read)
    {
        RowsBelow<T> rows = new();
        using var reader = Query(sql, [parameter]);

        while (reader.Read())
        {
            rows.Add(reader.GetInt64(0), read(reader));
        }

        return rows;
    }

    private SqliteDataReader Query(string sql, ReadOnlySpan<object> parameters)
    {
        if (!_prepared.TryGetValue(sql, out var command))
        {
            command = Connection.Command(sql);
            _prepared.Add(sql, command);
        }

        command.Parameters.Clear();

        for (var i = 0; i < parameters.Length; i++)
        {
            command.Parameters.AddWithValue("@" + (char)('1' + i), parameters[i]);
        }

        return command.ExecuteReader();
    }
}

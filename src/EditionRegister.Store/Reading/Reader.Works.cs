using EditionRegister.Domain.Dates;
using EditionRegister.Domain.Works;
using EditionRegister.Store.Sqlite;
using Microsoft.Data.Sqlite;

namespace EditionRegister.Store.Reading;

public sealed partial class Reader
{
    private readonly Dictionary<string, bool> _any = new(StringComparer.Ordinal);
    private int? _form;

    private string WorkSql => $"SELECT id, v, title, title_state, maker_state, year, year_earliest, year_latest, technique, note, {In(3, "worked_over")}, {In(4, "year_edtf")}, {In(4, "technique_colours")}, {In(4, "technique_support")} FROM work";

    /// <param name="row">The row.</param>
    /// <param name="column">Where the text stands; its earliest and latest day stand behind it.</param>
    /// <param name="edtf">Where its EDTF stands, which came with a later form.</param>
    private static RecordedDate DateAt(SqliteDataReader row, int column, int? edtf = null)
    {
        var read = edtf is { } at ? row.TextOrNull(at) : null;

        return row.IsDBNull(column) && row.IsDBNull(column + 1) && row.IsDBNull(column + 2) && read is null
            ? RecordedDate.None
            : new RecordedDate(row.TextOrNull(column), row.TextOrNull(column + 1), row.TextOrNull(column + 2)) { ReadAs = read };
    }

    /// <summary>Counts outside the range of the trade are damage; they are shown clipped rather than thrown.</summary>
    private static int? CountOrNull(SqliteDataReader row, int column) =>
        row.IsDBNull(column) ? null : (int)Math.Clamp(row.GetInt64(column), int.MinValue, int.MaxValue);

    private static int Count(SqliteDataReader row, int column) => CountOrNull(row, column) ?? 0;

    /// <summary>A column that came with a later form, or nothing where this register has not grown to it.</summary>
    internal string In(int form, string column) => Form >= form ? column : "NULL";

    internal int Form => _form ??= Schema.FormOf(Connection);

    /// <summary>Whether there is anything in a table at all: most registers have no sets and no pictures, and nobody should wait for them.</summary>
    private bool Any(string table)
    {
        if (!_any.TryGetValue(table, out var any))
        {
            _any[table] = any = Has(table) && Connection.Number($"SELECT EXISTS (SELECT 1 FROM {table})") == 1;
        }

        return any;
    }

    private Work WorkOf(SqliteDataReader row, long id) => new()
    {
        Id = id,
        V = row.Figure(1),
        Title = row.TextOrNull(2),
        TitleState = row.Word(3),
        MakerState = row.Word(4),
        Year = DateAt(row, 5, 11),
        Technique = row.TextOrNull(8),
        TechniqueColours = CountOrNull(row, 12),
        TechniqueSupport = row.TextOrNull(13),
        Techniques = Any("work_technique") ? TechniquesOf(id) : [],
        Note = row.TextOrNull(9),
        Book = Book,
        Roles = Rows("SELECT id, person, role, ordinal FROM work_role WHERE work = @1 ORDER BY ordinal, id", [id], RoleOf),
        Matrices = Matrices(id),
        Runs = Runs(id),
        Editions = Editions(id),
        Impressions = Impressions(id),
        WorkedOver = row.NumberOrNull(10) is { } sheet ? WorkedOver(sheet) : null,
        Set = Any("print_set") ? SetOf(id) : null,
        Pictures = Any("picture") ? PicturesOf(id) : [],
        OwnWords = OwnWords,
    };

    private List<WorkTechnique> TechniquesOf(long work) => Rows(
        "SELECT id, ordinal, technique FROM work_technique WHERE work = @1 ORDER BY ordinal, id", [work], row => new WorkTechnique(row.Figure(0), Count(row, 1), row.Word(2)));

    private static WorkRole RoleOf(SqliteDataReader row) => new(row.Figure(0), row.Figure(1), row.Word(2), Count(row, 3));
}

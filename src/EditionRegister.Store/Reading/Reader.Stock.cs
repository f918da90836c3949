using EditionRegister.Domain.Conditions;
using EditionRegister.Domain.Stock;
using EditionRegister.Store.Sqlite;
using Microsoft.Data.Sqlite;

namespace EditionRegister.Store.Reading;

public sealed partial class Reader
{
    /// <summary>Every stock-take of a place, newest first; of every place where none is named.</summary>
    public IReadOnlyList<StockTake> StockTakes(long? place = null) => Any("stock_take")
        ? Rows($"SELECT id, v, place, occasion, taken, taken_earliest, taken_latest, person, note, {In(4, "taken_edtf")} FROM stock_take WHERE @1 = 0 OR place = @1 ORDER BY id DESC", [place ?? 0], StockTakeOf)
        : [];

    /// <summary>The stock-take of that id, or null.</summary>
    public StockTake? StockTake(long id) => Any("stock_take")
        ? Rows($"SELECT id, v, place, occasion, taken, taken_earliest, taken_latest, person, note, {In(4, "taken_edtf")} FROM stock_take WHERE id = @1", [id], StockTakeOf).FirstOrDefault()
        : null;

    /// <summary>Matrices with their works that lie in one of some places.</summary>
    public IReadOnlyList<(long Work, long Matrix)> MatricesIn(IReadOnlyCollection<long> places) => Form >= 3
        ? Rows($"SELECT work, id FROM matrix WHERE place IN ({Lists.ChestSheets.Listed(places)}) ORDER BY work, id", [], row => (row.Figure(0), row.Figure(1)))
        : [];

    /// <summary>The work a matrix belongs to and the matrix's id, by its code as stored; null where the code is no matrix's.</summary>
    public (long Work, long Matrix)? FindMatrixCode(string code) => Any("matrix_code")
        ? Rows<(long, long)?>("SELECT m.work, m.id FROM matrix_code c JOIN matrix m ON m.id = c.matrix WHERE c.code = @1", [code], row => (row.Figure(0), row.Figure(1))).FirstOrDefault()
        : null;

    /// <summary>Sheets, and matrices that have a code, that lie in one of some places by now.</summary>
    public IReadOnlyList<StockThing> StockIn(IReadOnlyCollection<long> places) =>
    [
        .. SheetsNow($"x.to_place IN ({Lists.ChestSheets.Listed(places)})"),
        .. Any("matrix_code") ? Rows(
            $"SELECT m.work, c.code, m.id FROM matrix m JOIN matrix_code c ON c.matrix = m.id WHERE m.place IN ({Lists.ChestSheets.Listed(places)}) ORDER BY m.work, m.id", [],
            row => new StockThing(row.Figure(0), row.Word(1), null, row.Figure(2))) : [],
    ];

    /// <summary>Sheets that someone has by now.</summary>
    public IReadOnlyList<StockThing> StockWith(long person) => SheetsNow($"x.to_holder IN ({Lists.ChestSheets.Listed([person])})");

    /// <summary>The sheet or the matrix that bears a code, or null.</summary>
    public StockThing? StockOf(string code) =>
        FindCode(code) is { } sheet ? new StockThing(sheet.Work, code, sheet.Impression, null)
        : FindMatrixCode(code) is { } matrix ? new StockThing(matrix.Work, code, null, matrix.Matrix)
        : null;

    /// <summary>The first later stock-take that found a sheet or a matrix where it belongs; null where none did.</summary>
    public long? FoundSince(long take, string code) => Rows<long?>(
        "SELECT t.id FROM stock_take_line x JOIN stock_take t ON t.id = x.stock_take WHERE t.id > @1 AND x.code = @2 AND x.outcome = 'present' AND t.occasion = 'stock-take' ORDER BY t.id LIMIT 1",
        [take, code], row => row.Figure(0)).FirstOrDefault();

    private List<StockThing> SheetsNow(string which) => Rows(
        $"SELECT r.work, i.code, i.id FROM whereabouts x JOIN impression i ON i.id = x.impression JOIN print_run r ON r.id = i.run WHERE {which} AND {IsLast("whereabouts")} ORDER BY r.work, r.ordinal, i.ordinal", [],
        row => new StockThing(row.Figure(0), row.Word(1), row.Figure(2), null));

    /// <summary>Every word there is for what is the matter with a sheet, as the register was given them.</summary>
    public IReadOnlyList<ConditionTerm> ConditionTerms() => Has("condition_term")
        ? Rows("SELECT word, name FROM condition_term ORDER BY id", [], row => new ConditionTerm(row.Word(0), row.Word(1), ConditionTerm.Of(row.Word(0))?.Meaning ?? ""))
        : ConditionTerm.All;

    /// <summary>Lines of the newest stock-take of each place, by the sheet.</summary>
    private RowsBelow<SheetInStock> SheetsInStock(long work) => RowsBelow(
        """
        SELECT x.impression, t.id, t.v, t.place, t.taken, t.taken_earliest, t.taken_latest, x.outcome
        FROM print_run r JOIN impression i ON i.run = r.id JOIN stock_take_line x ON x.impression = i.id JOIN stock_take t ON t.id = x.stock_take
        WHERE r.work = @1 AND t.occasion = 'stock-take'
          AND NOT EXISTS (SELECT 1 FROM stock_take l WHERE l.place = t.place AND l.occasion = 'stock-take' AND l.id > t.id)
        ORDER BY x.impression, t.id
        """,
        work,
        row => new SheetInStock(row.Figure(1), row.Figure(2), row.Figure(3), DateAt(row, 4), row.Word(7)));

    private StockTake StockTakeOf(SqliteDataReader row) => new(
        row.Figure(0), row.Figure(1), row.Figure(2), row.Word(3), DateAt(row, 4, 9), row.NumberOrNull(7), row.TextOrNull(8),
        Rows("SELECT id, ordinal, code, impression, matrix, outcome FROM stock_take_line WHERE stock_take = @1 ORDER BY ordinal", [row.Figure(0)],
            line => new StockTakeLine(line.Figure(0), Count(line, 1), line.Word(2), line.NumberOrNull(3), line.NumberOrNull(4), line.Word(5))));
}

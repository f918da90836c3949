using EditionRegister.Domain.Stock;
using EditionRegister.Store.Sqlite;
using Microsoft.Data.Sqlite;

namespace EditionRegister.Store.Reading;

public sealed partial class Reader
{
    /// <summary>Every stock-take of a place, newest first; of every place where none is named.</summary>
    public IReadOnlyList<StockTake> StockTakes(long? place = null) => Any("stock_take")
        ? Rows("SELECT id, v, place, occasion, taken, taken_earliest, taken_latest, person, note FROM stock_take WHERE @1 = 0 OR place = @1 ORDER BY id DESC", [place ?? 0], StockTakeOf)
        : [];

    /// <summary>The stock-take of that id, or null.</summary>
    public StockTake? StockTake(long id) => Any("stock_take")
        ? Rows("SELECT id, v, place, occasion, taken, taken_earliest, taken_latest, person, note FROM stock_take WHERE id = @1", [id], StockTakeOf).FirstOrDefault()
        : null;

    /// <summary>Matrices with their works that lie in one of some places.</summary>
    public IReadOnlyList<(long Work, long Matrix)> MatricesIn(IReadOnlyCollection<long> places) => Form >= 3
        ? Rows($"SELECT work, id FROM matrix WHERE place IN ({Lists.ChestSheets.Listed(places)}) ORDER BY work, id", [], row => (row.Figure(0), row.Figure(1)))
        : [];

    /// <summary>The work a matrix belongs to and the matrix's id, by its code as stored; null where the code is no matrix's.</summary>
    public (long Work, long Matrix)? FindMatrixCode(string code) => Any("matrix_code")
        ? Rows<(long, long)?>("SELECT m.work, m.id FROM matrix_code c JOIN matrix m ON m.id = c.matrix WHERE c.code = @1", [code], row => (row.Figure(0), row.Figure(1))).FirstOrDefault()
        : null;

    private StockTake StockTakeOf(SqliteDataReader row) => new(
        row.Figure(0), row.Figure(1), row.Figure(2), row.Word(3), DateAt(row, 4), row.NumberOrNull(7), row.TextOrNull(8),
        Rows("SELECT id, ordinal, code, impression, matrix, outcome FROM stock_take_line WHERE stock_take = @1 ORDER BY ordinal", [row.Figure(0)],
            line => new StockTakeLine(line.Figure(0), Count(line, 1), line.Word(2), line.NumberOrNull(3), line.NumberOrNull(4), line.Word(5))));
}

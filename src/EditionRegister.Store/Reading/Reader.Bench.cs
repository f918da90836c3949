using EditionRegister.Domain.Passes;
using EditionRegister.Domain.Works;
using EditionRegister.Store.Sqlite;
using Microsoft.Data.Sqlite;

namespace EditionRegister.Store.Reading;

public sealed partial class Reader
{
    private const string OfPass = " JOIN pass p ON p.id = x.pass JOIN print_run r ON r.id = p.run WHERE r.work = @1 ORDER BY x.pass, ";

    private static readonly string[] LaterOfRun = ["cut_into", "made_of", "ready", "ready_earliest", "ready_latest", "posthumous", "cancellation_proof"];

    private static readonly string[] ReadOfRun =
    [
        "printed_edtf", "ready_edtf", "image_written", "sheet_written", "paper_name", "paper_maker", "paper_grammage", "paper_pounds", "paper_basis_height",
        "paper_basis_width", "paper_height", "paper_width", "paper_edges", "paper_lot",
    ];

    private List<Matrix> Matrices(long work)
    {
        var states = Any("matrix_state") ? MatrixStates(work) : new RowsBelow<MatrixState>();
        var code = In(3, "(SELECT c.code FROM matrix_code c WHERE c.matrix = x.id ORDER BY c.id LIMIT 1)");

        return Rows(
            $"SELECT id, v, what, material, reduction, made, made_earliest, made_latest, fate, fate_date, fate_earliest, fate_latest, fate_note, {In(3, "part")}, {code}, {In(3, "place")}, {In(3, "keeper")}, {In(3, "fate_proof")}, {In(4, "made_edtf")}, {In(4, "fate_edtf")} FROM matrix x WHERE work = @1 ORDER BY id",
            [work],
            row => new Matrix(row.Figure(0), row.Figure(1), row.Word(2), row.TextOrNull(3), row.Word(4), DateAt(row, 5, 18), row.Word(8), DateAt(row, 9, 19), row.TextOrNull(12))
            {
                Part = row.TextOrNull(13),
                Code = row.TextOrNull(14),
                Place = row.NumberOrNull(15),
                Keeper = row.NumberOrNull(16),
                FateProof = row.NumberOrNull(17),
                States = states[row.Figure(0)],
            });
    }

    private RowsBelow<MatrixState> MatrixStates(long work) => RowsBelow(
        $"SELECT x.matrix, x.id, x.v, x.ordinal, x.name, x.reached, x.reached_earliest, x.reached_latest, x.note, {In(4, "x.reached_edtf")} FROM matrix_state x JOIN matrix m ON m.id = x.matrix WHERE m.work = @1 ORDER BY x.matrix, x.ordinal",
        work,
        row => new MatrixState(row.Figure(1), row.Figure(2), Count(row, 3), row.Word(4), DateAt(row, 5, 9), row.TextOrNull(8)));

    private List<PrintRun> Runs(long work)
    {
        var passes = Any("pass") ? Passes(work) : new RowsBelow<Pass>();
        var later = string.Join(", ", LaterOfRun.Select(column => In(3, column)).Concat(ReadOfRun.Select(column => In(4, column))));

        return Rows(
            $"SELECT id, v, ordinal, purpose, paper, state, printed, printed_earliest, printed_latest, started, spoiled, unused, held_out, image_height, image_width, sheet_height, sheet_width, note, {later} FROM print_run WHERE work = @1 ORDER BY ordinal",
            [work],
            row => new PrintRun(
                row.Figure(0), row.Figure(1), Count(row, 2), row.Word(3), row.TextOrNull(4), row.TextOrNull(5), DateAt(row, 6, 25),
                CountOrNull(row, 9), CountOrNull(row, 10), CountOrNull(row, 11), CountOrNull(row, 12),
                row.NumberOrNull(13), row.NumberOrNull(14), row.NumberOrNull(15), row.NumberOrNull(16), row.TextOrNull(17))
            {
                CutInto = CountOrNull(row, 18),
                MadeOf = CountOrNull(row, 19),
                Ready = DateAt(row, 20, 26),
                Posthumous = row.TextOrNull(23),
                CancellationProof = row.TextOrNull(24),
                ImageWritten = row.TextOrNull(27),
                SheetWritten = row.TextOrNull(28),
                PaperRead = PaperAt(row, 29),
                Passes = passes[row.Figure(0)],
            });
    }

    /// <summary>Ten columns; null where none of them says anything.</summary>
    private static PaperOnRecord? PaperAt(SqliteDataReader row, int column)
    {
        PaperOnRecord read = new()
        {
            Name = row.TextOrNull(column),
            Maker = row.TextOrNull(column + 1),
            Grammage = row.NumberOrNull(column + 2),
            Pounds = row.NumberOrNull(column + 3),
            BasisHeight = row.NumberOrNull(column + 4),
            BasisWidth = row.NumberOrNull(column + 5),
            Height = row.NumberOrNull(column + 6),
            Width = row.NumberOrNull(column + 7),
            Edges = row.TextOrNull(column + 8),
            Lot = row.TextOrNull(column + 9),
        };

        return read == PaperOnRecord.None ? null : read;
    }

    private RowsBelow<Pass> Passes(long work)
    {
        var matrices = RowsBelow("SELECT x.pass, x.id, x.matrix, x.state FROM pass_matrix x" + OfPass + "x.id", work,
            row => new PassMatrix(row.Figure(1), row.Figure(2), row.NumberOrNull(3)));
        var colours = RowsBelow("SELECT x.pass, x.id, x.ordinal, x.colour, x.ink, x.manner FROM pass_colour x" + OfPass + "x.ordinal", work,
            row => new PassColour(row.Figure(1), Count(row, 2), row.Word(3), row.TextOrNull(4), row.Word(5)));
        var people = RowsBelow("SELECT x.pass, x.id, x.person FROM pass_person x" + OfPass + "x.id", work, row => new PassPerson(row.Figure(1), row.Figure(2)));
        var spoiled = RowsBelow("SELECT x.pass, x.id, x.fault, x.sheets FROM pass_spoiled x" + OfPass + "x.id", work,
            row => new PassCount(row.Figure(1), row.Word(2), Count(row, 3)));
        var heldOut = RowsBelow("SELECT x.pass, x.id, x.kind, x.sheets FROM pass_held_out x" + OfPass + "x.id", work,
            row => new PassCount(row.Figure(1), row.Word(2), Count(row, 3)));
        var sheets = RowsBelow("SELECT x.pass, x.id, x.impression FROM pass_sheet x" + OfPass + "x.id", work, row => new PassSheet(row.Figure(1), row.Figure(2)));

        return RowsBelow(
            $"SELECT p.run, p.id, p.v, p.ordinal, p.kind, p.name, p.side, p.reach, p.done, p.done_earliest, p.done_latest, p.sheets_in, p.added, p.sheets_out, p.spoiled, p.held_out, p.make_ready, p.note, {In(4, "p.done_edtf")} FROM pass p JOIN print_run r ON r.id = p.run WHERE r.work = @1 ORDER BY p.run, p.ordinal",
            work,
            row => new Pass
            {
                Id = row.Figure(1),
                V = row.Figure(2),
                Run = row.Figure(0),
                Ordinal = Count(row, 3),
                Kind = row.Word(4),
                Name = row.TextOrNull(5),
                Side = row.Word(6),
                Reach = row.Word(7),
                Done = DateAt(row, 8, 18),
                SheetsIn = CountOrNull(row, 11),
                Added = CountOrNull(row, 12),
                SheetsOut = CountOrNull(row, 13),
                Spoiled = CountOrNull(row, 14),
                HeldOut = CountOrNull(row, 15),
                MakeReady = CountOrNull(row, 16),
                Note = row.TextOrNull(17),
                Matrices = matrices[row.Figure(1)],
                Colours = colours[row.Figure(1)],
                People = people[row.Figure(1)],
                SpoiledBy = spoiled[row.Figure(1)],
                HeldOutAs = heldOut[row.Figure(1)],
                Sheets = sheets[row.Figure(1)],
            });
    }
}

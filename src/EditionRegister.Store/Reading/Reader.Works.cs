using EditionRegister.Domain.Chains;
using EditionRegister.Domain.Dates;
using EditionRegister.Domain.Editions;
using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.Works;
using EditionRegister.Store.Sqlite;
using Microsoft.Data.Sqlite;

namespace EditionRegister.Store.Reading;

public sealed partial class Reader
{
    private const string WorkSql = "SELECT id, v, title, title_state, maker_state, year, year_earliest, year_latest, technique, note FROM work";
    private const string OfWork = " JOIN impression i ON i.id = x.impression JOIN print_run r ON r.id = i.run WHERE r.work = @1 ORDER BY x.impression, ";

    private static RecordedDate DateAt(SqliteDataReader row, int column) =>
        row.IsDBNull(column) && row.IsDBNull(column + 1) && row.IsDBNull(column + 2)
            ? RecordedDate.None
            : new RecordedDate(row.TextOrNull(column), row.TextOrNull(column + 1), row.TextOrNull(column + 2));

    /// <summary>Counts outside the range of the trade are damage; they are shown clipped rather than thrown.</summary>
    private static int? CountOrNull(SqliteDataReader row, int column) =>
        row.IsDBNull(column) ? null : (int)Math.Clamp(row.GetInt64(column), int.MinValue, int.MaxValue);

    private static int Count(SqliteDataReader row, int column) => CountOrNull(row, column) ?? 0;

    private Work WorkOf(SqliteDataReader row, long id) => new()
    {
        Id = id,
        V = row.Figure(1),
        Title = row.TextOrNull(2),
        TitleState = row.Word(3),
        MakerState = row.Word(4),
        Year = DateAt(row, 5),
        Technique = row.TextOrNull(8),
        Note = row.TextOrNull(9),
        Book = Book,
        Roles = Rows("SELECT id, person, role, ordinal FROM work_role WHERE work = @1 ORDER BY ordinal, id", [id], RoleOf),
        Matrices = Rows(
            "SELECT id, v, what, material, reduction, made, made_earliest, made_latest, fate, fate_date, fate_earliest, fate_latest, fate_note FROM matrix WHERE work = @1 ORDER BY id",
            [id], MatrixOf),
        Runs = Rows(
            "SELECT id, v, ordinal, purpose, paper, state, printed, printed_earliest, printed_latest, started, spoiled, unused, held_out, image_height, image_width, sheet_height, sheet_width, note FROM print_run WHERE work = @1 ORDER BY ordinal",
            [id], RunOf),
        Editions = Editions(id),
        Impressions = Impressions(id),
    };

    private static WorkRole RoleOf(SqliteDataReader row) => new(row.Figure(0), row.Figure(1), row.Word(2), Count(row, 3));

    private static Matrix MatrixOf(SqliteDataReader row) => new(
        row.Figure(0), row.Figure(1), row.Word(2), row.TextOrNull(3), row.Word(4), DateAt(row, 5), row.Word(8), DateAt(row, 9), row.TextOrNull(12));

    private static PrintRun RunOf(SqliteDataReader row) => new(
        row.Figure(0), row.Figure(1), Count(row, 2), row.Word(3), row.TextOrNull(4), row.TextOrNull(5), DateAt(row, 6),
        CountOrNull(row, 9), CountOrNull(row, 10), CountOrNull(row, 11), CountOrNull(row, 12),
        row.NumberOrNull(13), row.NumberOrNull(14), row.NumberOrNull(15), row.NumberOrNull(16), row.TextOrNull(17));

    private List<Edition> Editions(long work)
    {
        var numbers = RowsBelow(
            "SELECT n.numbering, n.id, n.v, n.ordinal, n.fate, n.note FROM number n JOIN numbering m ON m.id = n.numbering JOIN edition e ON e.id = m.edition WHERE e.work = @1 ORDER BY n.numbering, n.ordinal",
            work,
            row => new NumberSlot(row.Figure(1), row.Figure(2), Count(row, 3), row.Word(4), row.TextOrNull(5)));
        var numberings = RowsBelow(
            "SELECT m.edition, m.id, m.v, m.ordinal, m.kind, m.notation, m.size, m.size_state FROM numbering m JOIN edition e ON e.id = m.edition WHERE e.work = @1 ORDER BY m.edition, m.ordinal",
            work,
            row => new Numbering(
                row.Figure(1), row.Figure(2), Count(row, 3), row.Word(4), row.Word(5), CountOrNull(row, 6), row.Word(7), numbers[row.Figure(1)]));

        return Rows(
            "SELECT id, v, ordinal, kind, extent, intended, declared, declared_earliest, declared_latest, closed, closed_on, closed_earliest, closed_latest, note FROM edition WHERE work = @1 ORDER BY ordinal",
            [work],
            row => new Edition(
                row.Figure(0), row.Figure(1), Count(row, 2), row.Word(3), row.Word(4), CountOrNull(row, 5), DateAt(row, 6), row.Word(9), DateAt(row, 10),
                row.TextOrNull(13), numberings[row.Figure(0)]));
    }

    private List<Impression> Impressions(long work)
    {
        var inscriptions = RowsBelow(
            "SELECT x.impression, x.id, x.ordinal, x.side, x.manner, x.position, x.text FROM inscription x" + OfWork + "x.ordinal", work,
            row => new Inscription(row.Figure(1), Count(row, 2), row.Word(3), row.Word(4), row.TextOrNull(5), row.TextOrNull(6)));
        var whereabouts = RowsBelow(
            "SELECT x.impression, x.id, x.v, x.ordinal, x.kind, x.from_state, x.from_place, x.from_holder, x.to_state, x.to_place, x.to_holder, x.moved, x.moved_earliest, x.moved_latest, x.until, x.until_earliest, x.until_latest, x.rate, x.note FROM whereabouts x" + OfWork + "x.ordinal", work,
            row => new WhereaboutsLink(
                row.Figure(1), row.Figure(2), Count(row, 3), row.Word(4),
                row.IsDBNull(5) ? null : new Position(row.Word(5), row.NumberOrNull(6), row.NumberOrNull(7)),
                new Position(row.Word(8), row.NumberOrNull(9), row.NumberOrNull(10)),
                DateAt(row, 11), DateAt(row, 14), CountOrNull(row, 17), row.TextOrNull(18)));
        var ownership = RowsBelow(
            "SELECT x.impression, x.id, x.v, x.ordinal, x.kind, x.from_state, x.from_owner, x.to_state, x.to_owner, x.agent, x.passed, x.passed_earliest, x.passed_latest, x.price, x.net, x.currency, x.note FROM ownership x" + OfWork + "x.ordinal", work,
            row => new OwnershipLink(
                row.Figure(1), row.Figure(2), Count(row, 3), row.Word(4),
                row.IsDBNull(5) ? null : new Owner(row.Word(5), row.NumberOrNull(6)),
                new Owner(row.Word(7), row.NumberOrNull(8)), row.NumberOrNull(9), DateAt(row, 10), row.NumberOrNull(13), row.NumberOrNull(14), row.TextOrNull(15), row.TextOrNull(16)));
        var documents = RowsBelow(
            "SELECT x.impression, x.id, x.v, x.kind, x.serial, x.issued, x.issued_earliest, x.issued_latest, x.standing, x.supersedes, x.statement FROM document x" + OfWork + "x.id", work,
            row => new IssuedDocument(row.Figure(1), row.Figure(2), row.Word(3), row.Word(4), DateAt(row, 5), row.Word(8), row.NumberOrNull(9), row.TextOrNull(10)));
        var kept = RowsBelow(
            "SELECT x.impression, x.id, x.header, x.value FROM kept_column x" + OfWork + "x.id", work,
            row => new KeptColumn(row.Figure(1), row.TextOrNull(2), row.TextOrNull(3)));

        return Rows(
            "SELECT i.id, i.v, i.run, i.ordinal, i.code, i.standing, i.fault, i.fault_note, i.numbering, i.number, i.pencilled, i.titled, i.signed, i.signature, i.condition, i.for_sale, i.asking, i.asking_currency, i.note FROM impression i JOIN print_run r ON r.id = i.run WHERE r.work = @1 ORDER BY r.ordinal, i.ordinal",
            [work],
            row => new Impression
            {
                Id = row.Figure(0),
                V = row.Figure(1),
                Run = row.Figure(2),
                Ordinal = Count(row, 3),
                Code = row.Word(4),
                Standing = row.Word(5),
                Fault = row.TextOrNull(6),
                FaultNote = row.TextOrNull(7),
                Numbering = row.NumberOrNull(8),
                Number = CountOrNull(row, 9),
                Pencilled = row.TextOrNull(10),
                Titled = row.TextOrNull(11),
                Signed = row.Word(12),
                Signature = row.TextOrNull(13),
                Condition = row.TextOrNull(14),
                ForSale = row.Word(15),
                Asking = row.NumberOrNull(16),
                AskingCurrency = row.TextOrNull(17),
                Note = row.TextOrNull(18),
                Inscriptions = inscriptions[row.Figure(0)],
                Whereabouts = whereabouts[row.Figure(0)],
                Ownership = ownership[row.Figure(0)],
                Documents = documents[row.Figure(0)],
                KeptColumns = kept[row.Figure(0)],
            });
    }
}

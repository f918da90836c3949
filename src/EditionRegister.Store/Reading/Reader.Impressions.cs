using EditionRegister.Domain.Chains;
using EditionRegister.Domain.Impressions;
using EditionRegister.Store.Sqlite;
using Microsoft.Data.Sqlite;

namespace EditionRegister.Store.Reading;

public sealed partial class Reader
{
    private const string OfWork = " JOIN impression i ON i.id = x.impression JOIN print_run r ON r.id = i.run WHERE r.work = @1 ORDER BY x.impression, ";

    private List<Impression> Impressions(long work)
    {
        var roles = Any("inscription_role") ? InscriptionRoles(work) : new RowsBelow<InscribedRole>();
        var inscriptions = RowsBelow(
            $"SELECT x.impression, x.id, x.ordinal, x.side, x.manner, x.position, x.text, {Said("x.says")} FROM inscription x" + OfWork + "x.ordinal", work,
            row => new Inscription(row.Figure(1), Count(row, 2), row.Word(3), row.Word(4), row.TextOrNull(5), row.TextOrNull(6)) { Says = SaidAt(row, 7), Roles = roles[row.Figure(1)] });
        var whereabouts = RowsBelow(
            $"SELECT x.impression, x.id, x.v, x.ordinal, x.kind, x.from_state, x.from_place, x.from_holder, x.to_state, x.to_place, x.to_holder, x.moved, x.moved_earliest, x.moved_latest, x.until, x.until_earliest, x.until_latest, x.rate, x.note, {In(3, "x.agreement")}, {In(3, "x.value")}, {In(3, "x.value_currency")}, {In(3, "x.show")}, {In(4, "x.moved_edtf")}, {In(4, "x.until_edtf")} FROM whereabouts x" + OfWork + "x.ordinal", work,
            row => new WhereaboutsLink(
                row.Figure(1), row.Figure(2), Count(row, 3), row.Word(4),
                row.IsDBNull(5) ? null : new Position(row.Word(5), row.NumberOrNull(6), row.NumberOrNull(7)),
                new Position(row.Word(8), row.NumberOrNull(9), row.NumberOrNull(10)),
                DateAt(row, 11, 23), DateAt(row, 14, 24), CountOrNull(row, 17), row.TextOrNull(18))
            {
                Agreement = row.TextOrNull(19),
                Value = row.NumberOrNull(20),
                ValueCurrency = row.TextOrNull(21),
                Show = row.NumberOrNull(22),
            });
        var ownership = RowsBelow(
            $"SELECT x.impression, x.id, x.v, x.ordinal, x.kind, x.from_state, x.from_owner, x.to_state, x.to_owner, x.agent, x.passed, x.passed_earliest, x.passed_latest, x.price, x.net, x.currency, x.note, {In(4, "x.passed_edtf")} FROM ownership x" + OfWork + "x.ordinal", work,
            row => new OwnershipLink(
                row.Figure(1), row.Figure(2), Count(row, 3), row.Word(4),
                row.IsDBNull(5) ? null : new Owner(row.Word(5), row.NumberOrNull(6)),
                new Owner(row.Word(7), row.NumberOrNull(8)), row.NumberOrNull(9), DateAt(row, 10, 17), row.NumberOrNull(13), row.NumberOrNull(14), row.TextOrNull(15), row.TextOrNull(16)));
        var documents = RowsBelow(
            $"SELECT x.impression, x.id, x.v, x.kind, x.serial, x.issued, x.issued_earliest, x.issued_latest, x.standing, x.supersedes, x.statement, {In(4, "x.issued_edtf")} FROM document x" + OfWork + "x.id", work,
            row => new IssuedDocument(row.Figure(1), row.Figure(2), row.Word(3), row.Word(4), DateAt(row, 5, 11), row.Word(8), row.NumberOrNull(9), row.TextOrNull(10)));
        var kept = RowsBelow(
            "SELECT x.impression, x.id, x.header, x.value FROM kept_column x" + OfWork + "x.id", work,
            row => new KeptColumn(row.Figure(1), row.TextOrNull(2), row.TextOrNull(3)));

        var more = MoreOfSheets(work);

        return Rows(
            $"SELECT i.id, i.v, i.run, i.ordinal, i.code, i.standing, i.fault, i.fault_note, i.numbering, i.number, i.pencilled, i.titled, i.signed, i.signature, i.condition, i.for_sale, i.asking, i.asking_currency, i.note, {In(3, "i.after_pass")}, {In(3, "i.variant")}, {In(3, "i.dedication")}, {Said("i.pencil")} FROM impression i JOIN print_run r ON r.id = i.run WHERE r.work = @1 ORDER BY r.ordinal, i.ordinal",
            [work],
            row => more.AddedTo(new Impression
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
                AfterPass = row.NumberOrNull(19),
                Variant = row.TextOrNull(20),
                Dedication = row.TextOrNull(21),
                PencilSays = SaidAt(row, 22),
            }));
    }

    private RowsBelow<InscribedRole> InscriptionRoles(long work) => RowsBelow(
        "SELECT o.inscription, o.id, o.ordinal, o.role, o.name FROM inscription_role o JOIN inscription x ON x.id = o.inscription JOIN impression i ON i.id = x.impression JOIN print_run r ON r.id = i.run WHERE r.work = @1 ORDER BY o.inscription, o.ordinal",
        work,
        row => new InscribedRole(row.Figure(1), Count(row, 2), row.Word(3), row.TextOrNull(4)));

    /// <summary>The eight columns of what a text says of number, edition and state.</summary>
    private string Said(string of) => string.Join(", ", SaidOfNumber.Facts.Select(fact => In(4, $"{of}_{fact}")));

    private static SaidOfNumber? SaidAt(SqliteDataReader row, int column) => row.TextOrNull(column) is not { } kind ? null : new SaidOfNumber(kind)
    {
        Series = row.TextOrNull(column + 1),
        Number = CountOrNull(row, column + 2),
        Size = CountOrNull(row, column + 3),
        Hedge = row.TextOrNull(column + 4),
        Notation = row.TextOrNull(column + 5),
        State = CountOrNull(row, column + 6),
        StateOf = CountOrNull(row, column + 7),
    };
}

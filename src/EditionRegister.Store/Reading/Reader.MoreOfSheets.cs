using EditionRegister.Domain.Conditions;
using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.Sets;
using EditionRegister.Domain.Works;
using EditionRegister.Domain.Stock;
using EditionRegister.Store.Sqlite;

namespace EditionRegister.Store.Reading;

/// <summary>What only some sheets have, by the sheet.</summary>
internal sealed record MoreOfSheets
{
    public RowsBelow<Grade> Grades { get; init; } = new();

    public RowsBelow<SheetLink> Links { get; init; } = new();

    public RowsBelow<SheetChange> Changes { get; init; } = new();

    public RowsBelow<Reservation> Reservations { get; init; } = new();

    public RowsBelow<ConditionReport> Conditions { get; init; } = new();

    public RowsBelow<SheetInStock> Stock { get; init; } = new();

    public RowsBelow<SetSheet> SetSheets { get; init; } = new();

    public RowsBelow<SetMembership> Memberships { get; init; } = new();

    public IReadOnlyDictionary<long, WorkedInto> WorkedInto { get; init; } = new Dictionary<long, WorkedInto>();

    public bool IsNothing { get; init; }

    public Impression AddedTo(Impression sheet) => IsNothing ? sheet : sheet with
    {
        Grade = Grades[sheet.Id] is [var grade, ..] ? grade : null,
        Links = Links[sheet.Id],
        Changes = Changes[sheet.Id],
        Reservations = Reservations[sheet.Id],
        ConditionReports = Conditions[sheet.Id],
        Stock = Stock[sheet.Id],
        SetSheets = SetSheets[sheet.Id],
        InSet = Memberships[sheet.Id] is [var set, ..] ? set : null,
        WorkedInto = WorkedInto.GetValueOrDefault(sheet.Id),
    };
}

public sealed partial class Reader
{
    private static readonly MoreOfSheets Nothing = new() { IsNothing = true };

    private MoreOfSheets MoreOfSheets(long work)
    {
        string[] tables = ["grade", "sheet_link", "sheet_change", "reservation", "condition_report", "stock_take", "set_sheet"];

        return WorkedInto.Count == 0 && !tables.Any(Any) ? Nothing : new MoreOfSheets
        {
            WorkedInto = WorkedInto,
            Grades = Any("grade") ? Grades(work) : new(),
            Links = Any("sheet_link") ? SheetLinks(work) : new(),
            Changes = Any("sheet_change") ? SheetChanges(work) : new(),
            Reservations = Any("reservation") ? Reservations(work) : new(),
            Conditions = Any("condition_report") ? ConditionReports(work) : new(),
            Stock = Any("stock_take") ? SheetsInStock(work) : new(),
            SetSheets = Any("set_sheet") ? SetSheets(work) : new(),
            Memberships = Any("set_sheet") ? SetMemberships(work) : new(),
        };
    }

    private RowsBelow<Grade> Grades(long work) => RowsBelow(
        $"SELECT x.impression, x.id, x.v, x.registration, x.inking, x.edges, x.cleanness, x.likeness, x.against, x.graded, x.graded_earliest, x.graded_latest, x.note, {In(4, "x.graded_edtf")} FROM grade x" + OfWork + "x.id", work,
        row => new Grade
        {
            Id = row.Figure(1),
            V = row.Figure(2),
            Registration = CountOrNull(row, 3),
            Inking = CountOrNull(row, 4),
            Edges = CountOrNull(row, 5),
            Cleanness = CountOrNull(row, 6),
            Likeness = CountOrNull(row, 7),
            Against = row.Word(8),
            Graded = DateAt(row, 9, 13),
            Note = row.TextOrNull(12),
        });

    private RowsBelow<SheetLink> SheetLinks(long work) => RowsBelow(
        $"SELECT x.impression, x.id, x.kind, x.other, x.made, x.made_earliest, x.made_latest, x.note, {In(4, "x.made_edtf")} FROM sheet_link x" + OfWork + "x.id", work,
        row => new SheetLink(row.Figure(1), row.Word(2), row.Figure(3), DateAt(row, 4, 8), row.TextOrNull(7)));

    private RowsBelow<SheetChange> SheetChanges(long work) => RowsBelow(
        $"SELECT x.impression, x.id, x.ordinal, x.what, x.was, x.became, x.reason, x.changed, x.changed_earliest, x.changed_latest, {In(4, "x.changed_edtf")} FROM sheet_change x" + OfWork + "x.ordinal", work,
        row => new SheetChange(row.Figure(1), Count(row, 2), row.Word(3), row.TextOrNull(4), row.TextOrNull(5), row.TextOrNull(6), DateAt(row, 7, 10)));

    private RowsBelow<Reservation> Reservations(long work) => RowsBelow(
        $"SELECT x.impression, x.id, x.v, x.person, x.made, x.made_earliest, x.made_latest, x.until, x.until_earliest, x.until_latest, x.standing, x.note, {In(4, "x.made_edtf")}, {In(4, "x.until_edtf")} FROM reservation x" + OfWork + "x.id", work,
        row => new Reservation(row.Figure(1), row.Figure(2), row.NumberOrNull(3), DateAt(row, 4, 12), DateAt(row, 7, 13), row.Word(10), row.TextOrNull(11)));

    private RowsBelow<ConditionReport> ConditionReports(long work)
    {
        var remarks = RowsBelow(
            "SELECT x.report, x.id, x.ordinal, x.term, x.position, x.note, x.picture FROM condition_remark x JOIN condition_report c ON c.id = x.report JOIN impression i ON i.id = c.impression JOIN print_run r ON r.id = i.run WHERE r.work = @1 ORDER BY x.report, x.ordinal",
            work,
            row => new ConditionRemark(row.Figure(1), Count(row, 2), row.Word(3), row.TextOrNull(4), row.TextOrNull(5), row.NumberOrNull(6)));

        return RowsBelow(
            $"SELECT x.impression, x.id, x.v, x.ordinal, x.occasion, x.examined, x.examined_earliest, x.examined_latest, x.examiner, x.summary, {In(4, "x.examined_edtf")} FROM condition_report x" + OfWork + "x.ordinal", work,
            row => new ConditionReport(
                row.Figure(1), row.Figure(2), Count(row, 3), row.Word(4), DateAt(row, 5, 10), row.NumberOrNull(8), row.TextOrNull(9), remarks[row.Figure(1)]));
    }
}

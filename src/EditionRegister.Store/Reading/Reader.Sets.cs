using EditionRegister.Domain.Chains;
using EditionRegister.Domain.Pictures;
using EditionRegister.Domain.Sets;
using EditionRegister.Domain.Works;
using EditionRegister.Store.Sqlite;
using Microsoft.Data.Sqlite;

namespace EditionRegister.Store.Reading;

public sealed partial class Reader
{
    // What NumberIn reads: a sheet of another work is named without that work being read.
    private const string OtherSheetSql = """
        SELECT w.id, w.title, w.title_state, i.code, i.pencilled, i.standing, i.number, m.id, m.kind, m.notation, m.size, m.size_state,
               (SELECT f.kind FROM whereabouts f WHERE f.impression = i.id ORDER BY f.ordinal LIMIT 1), NULL,
        """;

    private const string OtherSheetFrom = " JOIN print_run r ON r.id = i.run JOIN work w ON w.id = r.work LEFT JOIN numbering m ON m.id = i.numbering ";

    private Dictionary<long, WorkedInto>? _workedInto;

    /// <summary>The works that have a given work among their parts.</summary>
    public IReadOnlyList<long> SetsWithPart(long work) => Any("set_part")
        ? Rows("SELECT s.work FROM set_part x JOIN print_set s ON s.id = x.print_set WHERE x.part = @1 ORDER BY s.id", [work], row => row.Figure(0))
        : [];

    /// <summary>The works that are sets.</summary>
    public IReadOnlyList<long> SetWorks() => Any("print_set") ? Rows("SELECT work FROM print_set ORDER BY work", [], row => row.Figure(0)) : [];

    private PrintSet? SetOf(long work) => Rows("SELECT id, v, form, signed_on, note FROM print_set WHERE work = @1", [work], row => new PrintSet(
        row.Figure(0), row.Figure(1), row.Word(2), row.Word(3), row.TextOrNull(4), PartsOf(row.Figure(0)))).FirstOrDefault();

    private List<SetPart> PartsOf(long set) => Rows(
        "SELECT x.id, x.ordinal, x.part, w.title, w.title_state FROM set_part x JOIN work w ON w.id = x.part WHERE x.print_set = @1 ORDER BY x.ordinal", [set],
        row => new SetPart(row.Figure(0), Count(row, 1), row.Figure(2), new ListedTitle(0, row.TextOrNull(3), row.Word(4), null, null).Shown));

    /// <summary>The sheets in the copies that are impressions of a work.</summary>
    private RowsBelow<SetSheet> SetSheets(long work)
    {
        RowsBelow<SetSheet> sheets = new();
        var rows = Rows(
            OtherSheetSql + """
             s.copy, s.id, s.sheet, s.standing, p.to_state, p.to_place, p.to_holder, o.to_state, o.to_owner, o.ordinal
            FROM set_sheet s JOIN impression i ON i.id = s.sheet
            """ + OtherSheetFrom + """
            LEFT JOIN whereabouts p ON p.impression = i.id AND p.ordinal = (SELECT max(ordinal) FROM whereabouts WHERE impression = i.id)
            LEFT JOIN ownership o ON o.impression = i.id AND o.ordinal = (SELECT max(ordinal) FROM ownership WHERE impression = i.id)
            WHERE s.copy IN (SELECT c.id FROM impression c JOIN print_run cr ON cr.id = c.run WHERE cr.work = @1) ORDER BY s.copy, s.id
            """,
            [work],
            row => (Copy: row.Figure(14), Sheet: new SetSheet(row.Figure(15), row.Figure(16), row.Figure(0), row.Word(3), NumberIn(row), row.Word(17), PositionAt(row, 18), OwnerAt(row, 21))
            {
                KindWord = row.TextOrNull(8),
                Ordinal = CountOrNull(row, 6),
                HasPassedOn = CountOrNull(row, 23) > 1,
            }));

        foreach (var (copy, sheet) in rows)
        {
            sheets.Add(copy, sheet);
        }

        return sheets;
    }

    /// <summary>The sets that sheets of a work lie in.</summary>
    private RowsBelow<SetMembership> SetMemberships(long work)
    {
        RowsBelow<SetMembership> memberships = new();
        var rows = Rows(
            OtherSheetSql + """
             s.sheet, i.id FROM set_sheet s JOIN impression i ON i.id = s.copy
            """ + OtherSheetFrom + "WHERE s.standing = 'in' AND s.sheet IN (SELECT c.id FROM impression c JOIN print_run cr ON cr.id = c.run WHERE cr.work = @1) ORDER BY s.id",
            [work],
            row => (Sheet: row.Figure(14), Set: new SetMembership(
                row.Figure(0), new ListedTitle(0, row.TextOrNull(1), row.Word(2), null, null).Shown, row.Figure(15), row.Word(3), NumberIn(row))));

        foreach (var (sheet, set) in rows)
        {
            memberships.Add(sheet, set);
        }

        return memberships;
    }

    /// <summary>Every sheet that was worked over, whatever its work: there are few, and they are looked for once.</summary>
    private IReadOnlyDictionary<long, WorkedInto> WorkedInto => _workedInto ??= Form < 3 ? new Dictionary<long, WorkedInto>() : Rows(
        "SELECT w.worked_over, w.id, w.title, w.title_state, (SELECT i.code FROM impression i JOIN print_run r ON r.id = i.run WHERE r.work = w.id ORDER BY i.id LIMIT 1) FROM work w WHERE w.worked_over IS NOT NULL ORDER BY w.id DESC", [],
        row => (Sheet: row.Figure(0), Into: new WorkedInto(row.Figure(1), new ListedTitle(0, row.TextOrNull(2), row.Word(3), null, null).Shown, row.TextOrNull(4))))
        .GroupBy(pair => pair.Sheet).ToDictionary(same => same.Key, same => same.Last().Into);

    private WorkedOver? WorkedOver(long sheet) => Rows(
        "SELECT i.code, w.id, w.title, w.title_state FROM impression i JOIN print_run r ON r.id = i.run JOIN work w ON w.id = r.work WHERE i.id = @1", [sheet],
        row => new WorkedOver(sheet, row.Word(0), row.Figure(1), new ListedTitle(0, row.TextOrNull(2), row.Word(3), null, null).Shown)).FirstOrDefault();

    private List<Picture> PicturesOf(long work) => Rows(
        $"SELECT id, v, ordinal, impression, edition, matrix, sha256, media, bytes, width, height, file_name, caption, credit, taken, taken_earliest, taken_latest, standing, {In(4, "taken_edtf")} FROM picture WHERE work = @1 ORDER BY ordinal",
        [work],
        row => new Picture
        {
            Id = row.Figure(0),
            V = row.Figure(1),
            Ordinal = Count(row, 2),
            Impression = row.NumberOrNull(3),
            Edition = row.NumberOrNull(4),
            Matrix = row.NumberOrNull(5),
            Sha256 = row.Word(6),
            Media = row.Word(7),
            Bytes = row.Figure(8),
            Width = Count(row, 9),
            Height = Count(row, 10),
            FileName = row.TextOrNull(11),
            Caption = row.TextOrNull(12),
            Credit = row.TextOrNull(13),
            Taken = DateAt(row, 14, 18),
            Standing = row.Word(17),
        });

    private static Position? PositionAt(SqliteDataReader row, int column) =>
        row.IsDBNull(column) ? null : new Position(row.Word(column), row.NumberOrNull(column + 1), row.NumberOrNull(column + 2));

    private static Owner? OwnerAt(SqliteDataReader row, int column) =>
        row.IsDBNull(column) ? null : new Owner(row.Word(column), row.NumberOrNull(column + 1));
}

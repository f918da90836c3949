using EditionRegister.Domain.Codes;
using EditionRegister.Domain.Dates;
using EditionRegister.Domain.Editions;
using EditionRegister.Store.Lists;
using EditionRegister.Store.Sqlite;
using Microsoft.Data.Sqlite;

namespace EditionRegister.Store.Reading;

public sealed partial class Reader
{
    private const string SheetSql = """
        SELECT w.id, w.title, w.title_state, i.code, i.pencilled, i.standing, i.number, m.id, m.kind, m.notation, m.size, m.size_state,
               (SELECT f.kind FROM whereabouts f WHERE f.impression = i.id ORDER BY f.ordinal LIMIT 1), x.kind,
        """;

    private const string SheetFrom =
        " x JOIN impression i ON i.id = x.impression JOIN print_run r ON r.id = i.run JOIN work w ON w.id = r.work LEFT JOIN numbering m ON m.id = i.numbering WHERE ";

    /// <summary>Sheets someone has by now.</summary>
    public KeptSheets Having(long person, int take) => Kept("whereabouts", "moved", "to_holder", [person], take);

    /// <summary>Sheets someone owns by now.</summary>
    public KeptSheets Owning(long person, int take) => Kept("ownership", "passed", "to_owner", [person], take);

    /// <summary>Sheets that lie in one of some places by now.</summary>
    public KeptSheets LyingIn(IReadOnlyCollection<long> places, int take) => Kept("whereabouts", "moved", "to_place", places, take);

    /// <summary>How many sheets each person has by now; only those asked for, or all.</summary>
    public IReadOnlyDictionary<long, long> HavingCounts(IReadOnlyCollection<long>? people = null) => LastCounts("whereabouts", "to_holder", people);

    /// <summary>How many sheets each person owns by now; only those asked for, or all.</summary>
    public IReadOnlyDictionary<long, long> OwningCounts(IReadOnlyCollection<long>? people = null) => LastCounts("ownership", "to_owner", people);

    /// <summary>How many sheets lie in each place itself by now; only those asked for, or all.</summary>
    public IReadOnlyDictionary<long, long> LyingCounts(IReadOnlyCollection<long>? places = null) => LastCounts("whereabouts", "to_place", places);

    /// <summary>How many works each person had a part in.</summary>
    public IReadOnlyDictionary<long, long> WorkCounts() =>
        Rows("SELECT person, count(DISTINCT work) FROM work_role WHERE person IS NOT NULL GROUP BY person", [], row => (Id: row.Figure(0), Count: row.Figure(1))).ToDictionary(one => one.Id, one => one.Count);

    /// <summary>What someone did for which works.</summary>
    public IReadOnlyList<RoleHeld> RolesOf(long person) => Rows(
        "SELECT w.id, w.title, w.title_state, w.year, x.role FROM work_role x JOIN work w ON w.id = x.work WHERE x.person = @1 ORDER BY w.id, x.role", [person],
        row => new RoleHeld(row.Figure(0), new ListedTitle(0, row.TextOrNull(1), row.Word(2), null, null).Shown, row.TextOrNull(3), row.Word(4)));

    private static string IsLast(string chain) =>
        $"NOT EXISTS (SELECT 1 FROM {chain} l WHERE l.impression = x.impression AND l.ordinal > x.ordinal)";

    private Dictionary<long, long> LastCounts(string chain, string column, IReadOnlyCollection<long>? only) => Rows(
        $"SELECT x.{column}, count(*) FROM {chain} x WHERE {(only is null ? $"x.{column} IS NOT NULL" : $"x.{column} IN ({ChestSheets.Listed(only)})")} AND {IsLast(chain)} GROUP BY x.{column}", [],
        row => (Id: row.Figure(0), Count: row.Figure(1))).ToDictionary(one => one.Id, one => one.Count);

    private KeptSheets Kept(string chain, string date, string column, IReadOnlyCollection<long> ids, int take)
    {
        var which = $"x.{column} IN ({ChestSheets.Listed(ids)}) AND {IsLast(chain)}";
        var terms = chain == "whereabouts" ? "x.until, x.until_earliest, x.until_latest, x.rate, x.to_place" : "NULL, NULL, NULL, NULL, NULL";
        var first = Rows(
            $"{SheetSql} x.{date}, x.{date}_earliest, x.{date}_latest, {terms} FROM {chain}{SheetFrom}{which} ORDER BY x.id LIMIT @1", [(long)take], KeptOf);

        // Where all of them are there they are counted; what damage tore from its work is on no list.
        return new KeptSheets(first, first.Count < take ? first.Count : Connection.Number($"SELECT count(*) FROM {chain} x WHERE {which}"));
    }

    private static KeptSheet KeptOf(SqliteDataReader row) => new(
        row.Figure(0),
        new ListedTitle(0, row.TextOrNull(1), row.Word(2), null, null).Shown,
        RegisterCode.TryParse(row.Word(3), out var code) ? code.ToString() : row.Word(3),
        NumberIn(row),
        row.Word(13),
        DateAt(row, 14),
        DateAt(row, 17),
        CountOrNull(row, 20),
        row.NumberOrNull(21));

    /// <summary>As <see cref="Domain.Works.Work.NumberOf"/> says it.</summary>
    private static string NumberIn(SqliteDataReader row) =>
        row.TextOrNull(4)
        ?? (row.IsDBNull(7) ? null : new Numbering(row.Figure(7), 0, 0, row.Word(8), row.Word(9), CountOrNull(row, 10), row.Word(11), []).Spell(CountOrNull(row, 6)))
        ?? (row.Word(5) != "kept" ? row.Word(5).Replace('-', ' ') : row.Word(12) == "as-listed" ? "number not known" : "not numbered");
}

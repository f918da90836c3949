using EditionRegister.Domain.Facts;
using EditionRegister.Domain.Integrity;
using EditionRegister.Domain.Shows;
using EditionRegister.Store.Sqlite;
using Microsoft.Data.Sqlite;

namespace EditionRegister.Store.Reading;

public sealed partial class Reader
{
    private string ShowSql => $"SELECT id, v, name, kind, place, host, opens, opens_earliest, opens_latest, closes, closes_earliest, closes_latest, note, {In(4, "opens_edtf")}, {In(4, "closes_edtf")} FROM show";

    // Who wrote an entry stands in its text alone, which may be damaged.
    private const string AcceptanceSql = """
        SELECT a.id, a.rule, a.subject_kind, a.subject_id, a.finding, a.reason, a.accepted, a.accepted_earliest, a.accepted_latest,
               (SELECT CASE WHEN json_valid(CAST(l.body AS TEXT)) THEN json_extract(CAST(l.body AS TEXT), '$.by') END FROM logbook l WHERE l.n = a.v)
        FROM accepted_finding a WHERE a.withdrawn = 'no' AND a.finding <> '' AND a.reason <> '' ORDER BY a.id
        """;

    /// <summary>Every show with its list; none in a register of a form that knew no shows.</summary>
    public IReadOnlyList<Show> Shows() => Has("show") ? Rows(ShowSql + " ORDER BY id", [], ShowOf) : [];

    /// <summary>The show whole, or null where there is none of that id.</summary>
    public Show? Show(long id) => Has("show") ? Rows(ShowSql + " WHERE id = @1", [id], ShowOf).FirstOrDefault() : null;

    /// <summary>The works that the sheets listed in a show are of.</summary>
    public IReadOnlyList<long> WorksShownIn(long show) => Has("show") ? Rows(
        "SELECT DISTINCT r.work FROM show_impression x JOIN impression i ON i.id = x.impression JOIN print_run r ON r.id = i.run WHERE x.show = @1 AND x.standing = 'listed' ORDER BY r.work",
        [show],
        row => row.Figure(0)) : [];

    /// <summary>The sheet and the show that a place in a list joins; null where there is none of that id.</summary>
    public (long Show, long Impression)? ShowListing(long id) =>
        Rows<(long, long)?>("SELECT show, impression FROM show_impression WHERE id = @1", [id], row => (row.Figure(0), row.Figure(1))).FirstOrDefault();

    /// <summary>Every acceptance that was not taken back and whose words were not erased, by what it accepts; the newest where there are several.</summary>
    public IReadOnlyDictionary<string, Acceptance> Acceptances()
    {
        Dictionary<string, Acceptance> standing = new(StringComparer.Ordinal);

        if (Has("accepted_finding"))
        {
            using var row = Query(AcceptanceSql, []);

            while (row.Read())
            {
                standing[FindingHandles.WordsOf(row.Word(1), row.Word(2), row.Figure(3), row.Word(4))] = AcceptanceOf(row);
            }
        }

        return standing;
    }

    private bool Has(string table) => FactCatalogue.Table(table).Since <= Form;

    private Acceptance AcceptanceOf(SqliteDataReader row) =>
        new(row.Figure(0), row.Word(5), DateAt(row, 6), row.NumberOrNull(9) is { } by ? Book.NameOf(by) : null);

    private Show ShowOf(SqliteDataReader row) => new()
    {
        Id = row.Figure(0),
        V = row.Figure(1),
        Name = row.TextOrNull(2),
        Kind = row.Word(3),
        Place = row.NumberOrNull(4),
        Host = row.NumberOrNull(5),
        Opens = DateAt(row, 6, 13),
        Closes = DateAt(row, 9, 14),
        Note = row.TextOrNull(12),
        Listings = Rows("SELECT id, v, impression, ordinal, standing FROM show_impression WHERE show = @1 ORDER BY ordinal, id", [row.Figure(0)], ListingOf),
    };

    private static ShowListing ListingOf(SqliteDataReader row) => new(row.Figure(0), row.Figure(1), row.Figure(2), Count(row, 3), row.Word(4));
}

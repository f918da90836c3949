using EditionRegister.Store.Sqlite;

namespace EditionRegister.Store.Reading;

public sealed partial class Reader
{
    private static readonly Dictionary<string, string> WhereSubjectsLie = new(StringComparer.Ordinal)
    {
        ["work"] = "SELECT id, NULL, NULL FROM work WHERE id = @1",
        ["print-run"] = "SELECT work, NULL, NULL FROM print_run WHERE id = @1",
        ["matrix"] = "SELECT work, NULL, NULL FROM matrix WHERE id = @1",
        ["edition"] = "SELECT work, id, NULL FROM edition WHERE id = @1",
        ["numbering"] = "SELECT e.work, e.id, NULL FROM numbering m JOIN edition e ON e.id = m.edition WHERE m.id = @1",
        ["number"] = "SELECT e.work, e.id, NULL FROM number n JOIN numbering m ON m.id = n.numbering JOIN edition e ON e.id = m.edition WHERE n.id = @1",
        ["picture"] = "SELECT work, NULL, NULL FROM picture WHERE id = @1",
        ["impression"] = "SELECT r.work, NULL, i.code FROM impression i JOIN print_run r ON r.id = i.run WHERE i.id = @1",
    };

    /// <summary>The work a thing belongs to, and its edition or its code where it has one; null where there is none of that kind and id.</summary>
    public (long? Work, long? Edition, string? Code)? PlaceOfSubject(string kind, long id) => WhereSubjectsLie.TryGetValue(kind, out var sql)
        ? Rows<(long?, long?, string?)?>(sql, [id], row => (row.NumberOrNull(0), row.NumberOrNull(1), row.TextOrNull(2))).FirstOrDefault()
        : null;
}

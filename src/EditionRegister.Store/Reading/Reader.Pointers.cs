using EditionRegister.Domain.Facts;
using EditionRegister.Store.Sqlite;

namespace EditionRegister.Store.Reading;

public sealed partial class Reader
{
    /// <summary>What kind of batch that is, deed or read-in, as long as it stands; null where there is none or it was undone.</summary>
    public string? StandingBatch(long batch) => Rows("SELECT kind FROM batch WHERE id = @1 AND undone = 'no'", [batch], row => row.Word(0)) is [var kind] ? kind : null;

    /// <summary>A row outside <paramref name="rows"/> that points at one of them, or null. Asks the database itself which facts are pointers.</summary>
    public RowName? PointedAtFromOutside(IReadOnlySet<RowName> rows)
    {
        var targets = rows.Select(row => row.Table).ToHashSet(StringComparer.Ordinal);

        foreach (var table in FactCatalogue.Tables)
        {
            foreach (var (fact, target) in Pointers(table).Where(pointer => targets.Contains(pointer.Target)))
            {
                var pointers = Rows($"SELECT id, {fact} FROM {table.Name} WHERE {fact} IS NOT NULL", [], row => (Id: row.Figure(0), At: row.Figure(1)));

                foreach (var (id, at) in pointers)
                {
                    RowName from = new(table.Name, id);

                    if (rows.Contains(new RowName(target, at)) && !rows.Contains(from))
                    {
                        return from;
                    }
                }
            }
        }

        return null;
    }

    /// <summary>Facts of a table that hold the id of a row in another.</summary>
    private List<(string Fact, string Target)> Pointers(FactTable table) =>
        Rows($"SELECT \"from\", \"table\" FROM pragma_foreign_key_list('{table.Name}') WHERE \"to\" = 'id' AND \"from\" <> 'v'", [], row => (row.GetString(0), row.GetString(1)));
}

using System.Globalization;
using System.Text.Json;
using EditionRegister.Domain.Facts;
using EditionRegister.Store.Logbook;
using EditionRegister.Store.Sqlite;

namespace EditionRegister.Store.Reading;

/// <summary>How a fact stands in its entry.</summary>
public enum FactStanding
{
    /// <summary>In the entry itself.</summary>
    Open,

    /// <summary>Sealed, and still there to be read.</summary>
    Sealed,

    /// <summary>Sealed and erased since; which facts these were is known to nobody.</summary>
    Erased,

    /// <summary>The whole row is undone by this entry.</summary>
    Undone,

    /// <summary>This entry erased what another had sealed; the id is that entry's number.</summary>
    Erases,
}

/// <summary>One fact as an entry sets it; the fact is empty where a whole row is meant, the value null where it was set to nothing.</summary>
public sealed record EntryFact(string Table, long Id, string Fact, string? Value, FactStanding Standing);

/// <summary>All facts of an entry in its order, and its leaf hash in hex. <paramref name="Damage"/> says why where they cannot be read.</summary>
public sealed record EntryFacts(IReadOnlyList<EntryFact> Facts, string Leaf, string? Damage);

public sealed partial class Reader
{
    /// <summary>What an entry sets, row by row; null where there is no such entry.</summary>
    public EntryFacts? FactsOf(long n) => Rows("SELECT body, leaf FROM logbook WHERE n = @1", [n], row => (Body: row.BytesOrNone(0), Leaf: row.BytesOrNone(1))) is [var found]
        ? FactsIn(n, found.Body) with { Leaf = Convert.ToHexStringLower(found.Leaf) }
        : null;

    private EntryFacts FactsIn(long n, byte[] body)
    {
        try
        {
            EntryReader entry = new();
            entry.Read(body);

            return new EntryFacts([.. entry.Sets.SelectMany((row, i) => FactsOf(n, i, row)), .. entry.Unsets.Select(Undone), .. entry.Erased.Select(Erases)], "", null);
        }
        catch (JsonException damage)
        {
            return new EntryFacts([], "", damage.Message);
        }
    }

    private static EntryFact Undone(ReadRow row) => new(row.Table.Name, row.Id, "", null, FactStanding.Undone);

    private static EntryFact Erases(SealedName name) => new("logbook", name.N, "", null, FactStanding.Erases);

    private IEnumerable<EntryFact> FactsOf(long n, int index, ReadRow row)
    {
        var open = row.Facts.Select(fact => FactOf(row, fact, FactStanding.Open));

        return row.Commitment is null ? open : open.Concat(Unsealed(n, index, row));
    }

    private List<EntryFact> Unsealed(long n, int index, ReadRow row)
    {
        foreach (var body in Rows("SELECT body FROM sealed WHERE n = @1 AND i = @2", [n, (long)index], found => found.BytesOrNone(0)))
        {
            return [.. RowJson.ReadSealed(body).Facts.Select(fact => FactOf(row, fact, FactStanding.Sealed))];
        }

        return [new EntryFact(row.Table.Name, row.Id, "", null, FactStanding.Erased)];
    }

    private static EntryFact FactOf(ReadRow row, ReadFact fact, FactStanding standing) =>
        new(row.Table.Name, row.Id, row.Table.Facts[fact.Place].Name, Shown(fact.Value), standing);

    private static string? Shown(FactValue value) => value.Number is { } number ? number.ToString(CultureInfo.InvariantCulture) : value.Text;
}

using EditionRegister.Domain.Numbers;
using EditionRegister.Domain.Works;

namespace EditionRegister.UseCases.ReadingIn;

/// <summary>What a file lists of one work: rows that agree on maker, title, year and technique. A row without a title is a work of its own.</summary>
internal sealed class ListedWork(IReadOnlyList<ReadRow> rows, Work? known)
{
    public IReadOnlyList<ReadRow> Rows { get; } = rows;

    public ReadRow First => Rows[0];

    /// <summary>The work in the register that these rows add to, or null for a new one.</summary>
    public Work? Known { get; } = known;

    public IReadOnlyList<ListedEdition> Editions { get; } =
    [
        .. rows.Where(SpeaksOfAnEdition).GroupBy(row => (Kind: KindOf(row, rows), Extent: ExtentOf(row)))
            .SelectMany(group => group.Key.Kind == "unique" ? OneByOne(group) : [[.. group]], (group, of) => new ListedEdition(group.Key.Kind, group.Key.Extent, of)),
    ];

    public ListedEdition? EditionOf(ReadRow row) => Editions.FirstOrDefault(edition => edition.Rows.Contains(row));

    private static bool SpeaksOfAnEdition(ReadRow row) =>
        row.Number is not null || row.EditionKind is not null || row.EditionSize is not null || row.EditionIsOpen || row.EditionStatement is not null;

    /// <summary>A print and its ghost are 1/1 both, and each is an edition of its own: the second row of a number begins another.</summary>
    private static List<List<ReadRow>> OneByOne(IEnumerable<ReadRow> rows)
    {
        List<List<ReadRow>> editions = [];

        foreach (var row in rows)
        {
            if (editions.Find(edition => row.Number is null || edition.TrueForAll(other => other.Number != row.Number)) is { } open)
            {
                open.Add(row);
            }
            else
            {
                editions.Add([row]);
            }
        }

        return editions;
    }

    private static string KindOf(ReadRow row, IReadOnlyList<ReadRow> all) =>
        row.EditionKind
        ?? (all.Any(other => other.EditionIsOpen) ? "open"
            : all.Any(other => other.EditionSize is not null || other.EditionHedge is not null || other.NumberHedge is not null || other.Number is { Of: not null, Kind.InSize: true }) ? "limited"
            : "unknown");

    /// <summary>An edition whose maker nobody knows is not taken for ours.</summary>
    private static string ExtentOf(ReadRow row) => row.Extent ?? (row.Maker is null ? "someone-elses" : "partly-known");
}

/// <summary>What a file lists of one edition, with its numberings.</summary>
internal sealed class ListedEdition
{
    public ListedEdition(string kind, string extent, IReadOnlyList<ReadRow> rows)
    {
        Kind = kind;
        Extent = extent;
        Rows = rows;
        var sizes = rows.Select(row => row.EditionSize).OfType<int>().Distinct().ToList();
        Sizes = sizes;
        Statement = rows.Select(row => row.EditionStatement).FirstOrDefault(words => words is not null);
        Numberings = ListedNumberings.Of(rows, sizes);
    }

    public string Kind { get; }

    public string Extent { get; }

    public IReadOnlyList<ReadRow> Rows { get; }

    /// <summary>Every edition size the rows name; more than one is a contradiction.</summary>
    public IReadOnlyList<int> Sizes { get; }

    /// <summary>The edition in words, as the first row that has them says it.</summary>
    public string? Statement { get; }

    public IReadOnlyList<ListedNumbering> Numberings { get; }

    public ListedNumbering? NumberingOf(ReadRow row) => Numberings.FirstOrDefault(numbering => numbering.Has(row));
}

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
        row.Number is not null || row.EditionKind is not null || row.EditionSize is not null || row.EditionIsOpen;

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
            : all.Any(other => other.EditionSize is not null || other.Number is { Of: not null, Kind.InSize: true }) ? "limited"
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
        Numberings = [.. NumberingsOf(rows, sizes)];
    }

    public string Kind { get; }

    public string Extent { get; }

    public IReadOnlyList<ReadRow> Rows { get; }

    /// <summary>Every edition size the rows name; more than one is a contradiction.</summary>
    public IReadOnlyList<int> Sizes { get; }

    public IReadOnlyList<ListedNumbering> Numberings { get; }

    public ListedNumbering? NumberingOf(ReadRow row) => Numberings.FirstOrDefault(numbering => numbering.Has(row));

    private static IEnumerable<ListedNumbering> NumberingsOf(IReadOnlyList<ReadRow> rows, List<int> sizes)
    {
        var isOpen = rows.Any(row => row.EditionIsOpen);
        var groups = rows.GroupBy(row => (Kind: row.Number?.Kind ?? NumberingKind.Numbered, Notation: row.Number?.Notation ?? Notation.Arabic)).ToList();
        var regular = (NumberingKind.Numbered, Notation.Arabic);

        // A size is said of the edition itself, also where only its proofs are listed.
        if (groups.TrueForAll(group => group.Key != regular) && (sizes.Count > 0 || isOpen))
        {
            yield return new ListedNumbering(NumberingKind.Numbered, Notation.Arabic, sizes.Count > 0 ? sizes[0] : null, sizes.Count > 0 ? "stated" : "open", []);
        }

        foreach (var group in groups.OrderBy(group => group.Key.Kind.IsOwn ? NumberingKind.All.Count : NumberingKind.All.ToList().IndexOf(group.Key.Kind)).ThenBy(group => group.Key.Kind.Word, StringComparer.Ordinal))
        {
            var ofs = group.Select(row => row.Number?.Of).OfType<int>().GroupBy(of => of).OrderByDescending(same => same.Count()).ThenBy(same => same.Key).Select(same => same.Key).ToList();
            var isRegular = group.Key == regular;
            int? size = isRegular && sizes.Count > 0 ? sizes[0] : ofs.Count > 0 ? ofs[0] : group.Key.Kind == NumberingKind.BonATirer ? 1 : null;

            yield return new ListedNumbering(group.Key.Kind, group.Key.Notation, size, size is not null ? "stated" : isRegular && isOpen ? "open" : "unknown", [.. group]);
        }
    }
}

/// <summary>What a file lists of one numbering.</summary>
internal sealed record ListedNumbering(NumberingKind Kind, Notation Notation, int? Size, string SizeState, IReadOnlyList<ReadRow> Rows)
{
    public bool Has(ReadRow row) => Rows.Any(one => ReferenceEquals(one, row));

    /// <summary>The number a row is given; null where it is not known. The one bon à tirer is the first of one.</summary>
    public int? OrdinalOf(ReadRow row) =>
        row.Number is null ? null : row.Number.Number ?? (Kind == NumberingKind.BonATirer && ReferenceEquals(Rows[0], row) ? 1 : null);
}

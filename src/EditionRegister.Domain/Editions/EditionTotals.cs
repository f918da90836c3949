using EditionRegister.Domain.Numbers;
using EditionRegister.Domain.Works;

namespace EditionRegister.Domain.Editions;

/// <summary>How many impressions of one kind an edition has; the count is null where nobody knows, or where there is no end.</summary>
public sealed record CountedKind(NumberingKind Kind, long? Count, string Span);

/// <summary>
/// What an edition comes to: its size, every kind of proof kept apart, the total of impressions, and the sheets that count in neither.
/// A count is null where a part of it is open, unknown or unreadable.
/// </summary>
public sealed record EditionTotals
{
    /// <summary>What counts in the edition size.</summary>
    public required long? Size { get; init; }

    /// <summary>at least 49; null where the size is sure, or nobody said anything of it.</summary>
    public string? NotSure { get; init; }

    /// <summary>How the numbers of the edition itself run: 1/40 to 40/40 and I/X to X/X.</summary>
    public required string SizeSpan { get; init; }

    /// <summary>Proofs that count in the total and not in the size, kind by kind.</summary>
    public required IReadOnlyList<CountedKind> Proofs { get; init; }

    /// <summary>The size and every proof.</summary>
    public required long? Total { get; init; }

    /// <summary>Trial, state, progressive and colour trial proofs: in no total, told apart.</summary>
    public required IReadOnlyList<CountedKind> SheetsPulled { get; init; }

    /// <summary>Numbers in the total of which it is recorded that no sheet was ever printed.</summary>
    public required int NeverPrinted { get; init; }

    /// <summary>Sheets of the work, whatever their edition.</summary>
    public required int LeftOut { get; init; }

    /// <summary>Sheets of the work, whatever their edition.</summary>
    public required int Spare { get; init; }

    public static EditionTotals Of(Work work, Edition edition)
    {
        ArgumentNullException.ThrowIfNull(work);
        ArgumentNullException.ThrowIfNull(edition);

        // A kind nobody can read may count in anything.
        var readable = edition.Numberings.All(numbering => numbering.Kind is not null);
        var inSize = edition.Numberings.Where(numbering => numbering.Kind is { InSize: true }).ToList();

        return new EditionTotals
        {
            Size = readable ? Sum(inSize) : null,
            NotSure = inSize is [{ Size: null } only] ? SizeNotSure.Bare(only.Hedge, only.HedgedSize) : null,
            SizeSpan = Spans(inSize),
            Proofs = Kinds(edition, kind => kind is { InTotal: true, InSize: false }),
            Total = readable ? Sum([.. edition.Numberings.Where(numbering => numbering.Kind is { InTotal: true })]) : null,
            SheetsPulled = Kinds(edition, kind => !kind.InTotal),
            NeverPrinted = edition.Numberings.Where(numbering => numbering.Kind is { InTotal: true }).SelectMany(numbering => numbering.Numbers).Count(number => number.Fate == "never-printed"),
            LeftOut = work.Impressions.Count(sheet => sheet.Standing == "left-out"),
            Spare = work.Impressions.Count(sheet => sheet.Standing == "spare"),
        };
    }

    private static List<CountedKind> Kinds(Edition edition, Func<NumberingKind, bool> which) =>
    [
        .. from numbering in edition.Numberings
           where numbering.Kind is not null && which(numbering.Kind)
           group numbering by numbering.Kind! into same
           select new CountedKind(same.Key, Sum([.. same]), Spans([.. same])),
    ];

    private static string Spans(List<Numbering> numberings) => string.Join(" and ", numberings.Select(numbering => numbering.Span));

    private static long? Sum(List<Numbering> numberings)
    {
        long? sum = numberings.Count == 0 ? null : 0;

        foreach (var numbering in numberings)
        {
            sum += numbering.Size is >= 1 ? numbering.Size : null;
        }

        return sum;
    }
}

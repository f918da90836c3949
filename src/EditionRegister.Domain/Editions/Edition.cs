using EditionRegister.Domain.Dates;

namespace EditionRegister.Domain.Editions;

/// <summary>What is declared of the kept impressions of a work: ours and wholly here, ours and partly known, or someone else's.</summary>
public sealed record Edition(
    long Id,
    long V,
    int Ordinal,
    string Kind,
    string Extent,
    int? Intended,
    RecordedDate Declared,
    string Closed,
    RecordedDate ClosedOn,
    string? Note,
    IReadOnlyList<Numbering> Numberings)
{
    /// <summary>at-once, on-demand, or null where nobody said.</summary>
    public string? Printing { get; init; }

    /// <summary>first, later, restrike or posthumous; null where nobody said.</summary>
    public string? Rank { get; init; }

    /// <summary>All impressions there are, as stated by others: of 83, say, with all proofs.</summary>
    public int? StatedTotal { get; init; }

    /// <summary>reset or disclosed, where fewer were printed than declared; else null.</summary>
    public string? FellShort { get; init; }

    /// <summary>The edition in somebody's words: edition of 75 plus 10 artist's proofs.</summary>
    public string? Statement { get; init; }

    /// <summary>Who is to have which numbers, as agreed.</summary>
    public IReadOnlyList<Entitlement> Entitlements { get; init; } = [];

    public bool IsClosed => Closed == "yes";

    /// <summary>Ours, and every number accounted for in this register.</summary>
    public bool IsWhole => Extent == "whole";

    public bool IsOurs => Extent != "someone-elses";

    /// <summary>The declared size: the sum of what counts in it, or null where a part of it is open or unknown.</summary>
    public int? Size => Sum(numbering => numbering.Kind is { InSize: true });

    /// <summary>All impressions the edition may have: its size and every proof that counts in the total.</summary>
    public int? Total => Sum(numbering => numbering.Kind is { InTotal: true });

    /// <summary>The numbering of that id, or null where this edition has none.</summary>
    public Numbering? Find(long? numbering)
    {
        foreach (var one in Numberings)
        {
            if (one.Id == numbering)
            {
                return one;
            }
        }

        return null;
    }

    private int? Sum(Func<Numbering, bool> counts)
    {
        var counted = Numberings.Where(counts).ToList();

        // Sizes as damage may leave them must not overflow.
        return counted.Count == 0 || counted.Any(numbering => numbering.Size is null) ? null : (int)Math.Min(counted.Sum(numbering => (long)numbering.Size!.Value), int.MaxValue);
    }
}

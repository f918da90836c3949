using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.Works;

namespace EditionRegister.Domain.Editions;

/// <summary>Which sheets would take the open numbers of a numbering if nobody chose: as they lie in the pile. Common practice, no source.</summary>
public static class NumbersProposed
{
    /// <summary>Kept sheets first and then those held out, for a proof; the other way round for trial and state proofs; never more than there are open numbers.</summary>
    public static IReadOnlyList<Impression> For(Work work, Numbering numbering)
    {
        ArgumentNullException.ThrowIfNull(work);
        ArgumentNullException.ThrowIfNull(numbering);

        var edition = work.Editions.FirstOrDefault(one => one.Find(numbering.Id) is not null);
        var free = work.Impressions.Where(sheet => sheet.Numbering is null && (edition is null || PrintingOf.Fits(work, edition, sheet))).ToList();
        var kept = free.Where(sheet => sheet.IsKept);
        var heldOut = free.Where(sheet => sheet.Standing == "held-out");
        var inTurn = numbering.Kind switch
        {
            { InSize: false, InTotal: true } => kept.Concat(heldOut),
            { InSize: false } => heldOut.Concat(kept),
            _ => kept,
        };

        return [.. numbering.IsOpen ? inTurn : inTurn.Take(OpenIn(work, numbering))];
    }

    /// <summary>Numbering by numbering of an edition, no sheet twice; a numbering nothing is there for is left out.</summary>
    public static IReadOnlyList<(Numbering Numbering, IReadOnlyList<Impression> Sheets)> ForAll(Work work, Edition edition)
    {
        ArgumentNullException.ThrowIfNull(work);
        ArgumentNullException.ThrowIfNull(edition);
        List<(Numbering, IReadOnlyList<Impression>)> all = [];

        foreach (var numbering in edition.Numberings.Where(one => one is { Kind: not null, Notation: not null }))
        {
            if (For(work, numbering) is { Count: > 0 } sheets)
            {
                all.Add((numbering, sheets));
                var taken = sheets.Select(sheet => sheet.Id).ToHashSet();
                work = work with { Impressions = [.. work.Impressions.Select(sheet => taken.Contains(sheet.Id) ? sheet with { Numbering = numbering.Id } : sheet)] };
            }
        }

        return all;
    }

    /// <summary>Numbers that a sheet could still take.</summary>
    public static int OpenIn(Work work, Numbering numbering)
    {
        ArgumentNullException.ThrowIfNull(work);
        ArgumentNullException.ThrowIfNull(numbering);

        var given = work.Impressions.Where(sheet => sheet.Numbering == numbering.Id).Select(sheet => sheet.Number).ToHashSet();

        return numbering.Numbers.Count(slot => slot.Fate is "open" or "unknown" && !given.Contains(slot.Ordinal));
    }
}

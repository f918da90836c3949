using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.Works;

namespace EditionRegister.Domain.Editions;

/// <summary>Which printing a sheet comes from: the numbers of a restrike or of a posthumous edition are never mixed with those of the first.</summary>
public static class PrintingOf
{
    /// <summary>False only where the purpose of the run surely speaks against it; what nobody said speaks against nothing.</summary>
    public static bool Fits(Work work, Edition edition, Impression sheet)
    {
        ArgumentNullException.ThrowIfNull(work);
        ArgumentNullException.ThrowIfNull(edition);
        ArgumentNullException.ThrowIfNull(sheet);

        return (work.RunOf(sheet)?.Purpose, IsRestrike(edition)) switch
        {
            ("restrike", false) => edition.Rank is null && !work.Editions.Any(IsRestrike),
            ("edition", true) => work.RunOf(sheet)?.Posthumous == "yes",
            _ => true,
        };
    }

    /// <summary>Printed again from the matrix after its edition, by the maker or after the maker's death.</summary>
    public static bool IsRestrike(Edition edition)
    {
        ArgumentNullException.ThrowIfNull(edition);

        return edition.Rank is "restrike" or "posthumous";
    }

    /// <summary>Numbers of what counts in the size that a sheet of the edition has, or had before it went: what was printed so far.</summary>
    public static int PrintedSoFar(Work work, Edition edition)
    {
        ArgumentNullException.ThrowIfNull(work);
        ArgumentNullException.ThrowIfNull(edition);

        return edition.Numberings.Where(numbering => numbering.Kind is { InSize: true }).Sum(numbering => numbering.Numbers.Where(slot => slot.Fate == "elsewhere").Select(slot => slot.Ordinal)
            .Union(work.Impressions.Where(sheet => sheet.Numbering == numbering.Id).Select(sheet => sheet.Number ?? 0)).Count(ordinal => ordinal > 0));
    }
}

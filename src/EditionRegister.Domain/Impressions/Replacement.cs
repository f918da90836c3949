using EditionRegister.Domain.Dates;
using EditionRegister.Domain.Editions;
using EditionRegister.Domain.Facts;
using EditionRegister.Domain.Works;

namespace EditionRegister.Domain.Impressions;

/// <summary>
/// The number of a sheet that was damaged, destroyed or never right goes to a spare. No number is made: the old sheet keeps its record and loses its number.
/// </summary>
public sealed record Replacement
{
    public const string Kind = "replaces";

    public RecordedDate Date { get; init; } = RecordedDate.None;

    /// <summary>What is wrong with the old sheet; needed unless its chain says that it is destroyed.</summary>
    public string? Fault { get; init; }

    /// <summary>Why, as written.</summary>
    public string? Reason { get; init; }

    /// <exception cref="RefusedException">One of <see cref="ReplacementRefusals"/>, or edition-not-ours-whole of an edition that is not.</exception>
    public void Record(Work work, Impression old, Impression spare, Deed deed)
    {
        ArgumentNullException.ThrowIfNull(work);
        ArgumentNullException.ThrowIfNull(deed);
        var isDestroyed = IsDestroyed(old);
        OldMay(work, old, isDestroyed);
        SpareMay(work, old, spare);

        PutAside(work, old, spare, isDestroyed, deed);
        deed.Set("impression", spare.Id, ("standing", "kept"), ("numbering", old.Numbering), ("number", old.Number));

        foreach (var certificate in old.Documents.Where(document => document.IsValidCertificate))
        {
            deed.Set("document", certificate.Id, ("standing", "withdrawn"));
        }

        var link = deed.NewId("sheet_link");
        deed.Set("sheet_link", link, ("impression", spare.Id), ("kind", Kind), ("other", old.Id), ("note", Reason));
        deed.SetDate("sheet_link", link, "made", Date);
    }

    /// <summary>What the sheet took the place of, or null.</summary>
    public static SheetLink? Of(Impression sheet)
    {
        ArgumentNullException.ThrowIfNull(sheet);

        return sheet.Links.FirstOrDefault(link => link.Kind == Kind);
    }

    /// <summary>The sheet that took the place of this one, or null.</summary>
    public static Impression? Of(Work work, Impression replaced)
    {
        ArgumentNullException.ThrowIfNull(work);
        ArgumentNullException.ThrowIfNull(replaced);

        return work.Impressions.FirstOrDefault(sheet => Of(sheet)?.Other == replaced.Id);
    }

    public static bool IsDestroyed(Impression sheet)
    {
        ArgumentNullException.ThrowIfNull(sheet);

        return sheet.Whereabouts is [.., { Kind: "destroyed", To.State: "gone" }];
    }

    // Two sheets must not say the same: the number is taken off the one that is still there. What was destroyed keeps what stood on it.
    private void PutAside(Work work, Impression old, Impression spare, bool isDestroyed, Deed deed)
    {
        deed.Set("impression", old.Id, ("numbering", FactValue.Null), ("number", FactValue.Null), ("standing", "left-out"), ("fault", Fault ?? old.Fault));

        if (isDestroyed || string.IsNullOrWhiteSpace(old.Pencilled))
        {
            return;
        }

        deed.SetPencilled(old.Id, null, work.OwnWords);
        var change = deed.NewId("sheet_change");
        deed.Set("sheet_change", change,
            ("impression", old.Id), ("ordinal", old.Changes.Count + 1), ("what", "number"), ("was", old.Pencilled), ("became", FactValue.Null),
            ("reason", Reason ?? $"replaced by {spare.ShownCode}"));
        deed.SetDate("sheet_change", change, "changed", Date);
    }

    private void OldMay(Work work, Impression old, bool isDestroyed)
    {
        if (work.EditionOf(old) is not { } edition || old.Number is null)
        {
            throw ReplacementRefusals.NoNumber(old);
        }

        if (!edition.IsWhole)
        {
            throw ReplacementRefusals.NotOurs(work);
        }

        if (!isDestroyed && !IsHere(work, old))
        {
            throw ReplacementRefusals.OldIsAway(work, old);
        }

        if (!isDestroyed && Fault is null)
        {
            throw ReplacementRefusals.FaultMissing(old);
        }

        if (Fault is not null && work.OwnWords.FaultOf(Fault) is null)
        {
            throw ImpressionRefusals.UnknownFault(Fault, work.OwnWords);
        }
    }

    private static void SpareMay(Work work, Impression old, Impression spare)
    {
        if (spare.Number is not null)
        {
            throw ReplacementRefusals.SpareNumbered(work, spare);
        }

        if (spare.Standing is not ("spare" or "kept"))
        {
            throw ReplacementRefusals.NoSpare(spare);
        }

        if (spare.IsSigned)
        {
            throw ReplacementRefusals.SpareSigned(spare);
        }

        if (!IsHere(work, spare))
        {
            throw ReplacementRefusals.SpareIsAway(work, spare);
        }

        if (!PrintingOf.Fits(work, work.EditionOf(old)!, spare))
        {
            throw EditionRefusals.NotOfThisPrinting(spare, work.EditionOf(old)!, work);
        }
    }

    /// <summary>The maker's, and in the maker's hands or in a place.</summary>
    private static bool IsHere(Work work, Impression sheet) =>
        (sheet.Whose is { State: "known", Person: { } owner } ? work.MakersAndEstate.Any(maker => maker.Id == owner) : !work.Makers.Any() && sheet.Ownership.Count == 1)
        && sheet.Where is { } where
        && (where.State == "placed" || (where.State == "with" && work.MakersAndEstate.Any(maker => maker.Id == where.Holder)));
}

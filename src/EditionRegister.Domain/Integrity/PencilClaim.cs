using EditionRegister.Domain.Editions;
using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.Numbers;
using EditionRegister.Domain.Works;

namespace EditionRegister.Domain.Integrity;

/// <summary>What the pencil on a sheet says plainly, and the numbering it thereby claims a place in; null where none or several could be meant.</summary>
internal sealed record PencilClaim(Impression Sheet, PencilledNumber Says, Edition? Edition, Numbering? Numbering)
{
    /// <summary>The register has the sheet in the numbering its pencil claims.</summary>
    public bool IsRecorded => Numbering is not null && Sheet.Numbering == Numbering.Id;

    public static IEnumerable<PencilClaim> Of(Work work) =>
        from sheet in work.Impressions
        where !string.IsNullOrWhiteSpace(sheet.Pencilled)
        let says = sheet.Read(work.NumberingOf(sheet)?.Notation, work.OwnWords)
        where says is not null && !WasReplaced(work, sheet)
        let place = Place(work, sheet, says)
        select new PencilClaim(sheet, says, place?.Edition, place?.Numbering);

    // What was destroyed and replaced keeps what stood on it, and claims nothing any more.
    private static bool WasReplaced(Work work, Impression sheet) => sheet.IsDestroyed && Replacement.Of(work, sheet) is not null;

    private static NumberingPlace? Place(Work work, Impression sheet, PencilledNumber says)
    {
        var open = work.Numberings.Where(place => Fits(place.Numbering, says)).ToList();

        return open.FirstOrDefault(place => place.Numbering.Id == sheet.Numbering)
            ?? (open.Where(place => Within(work, sheet, place.Edition) && SizeFits(place.Numbering, says)).ToList() is [var only] ? only : null);
    }

    private static bool Within(Work work, Impression sheet, Edition edition) => (work.EditionOf(sheet) ?? edition) == edition;

    private static bool Fits(Numbering numbering, PencilledNumber says) =>
        numbering.Kind == says.Kind && (numbering.Notation == says.Notation || (says.Number is null && numbering.Notation is not null));

    private static bool SizeFits(Numbering numbering, PencilledNumber says) => says.Of is null || numbering.Size is null || says.Of == numbering.Size;
}

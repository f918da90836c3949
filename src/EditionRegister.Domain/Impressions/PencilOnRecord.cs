using EditionRegister.Domain.Facts;
using EditionRegister.Domain.Works;

namespace EditionRegister.Domain.Impressions;

/// <summary>Number, title and signature as the record has them of one sheet; null where it says nothing.</summary>
/// <param name="Signed">yes, no or unknown.</param>
public sealed record PencilOnRecord(string? Pencilled, string? Titled, string Signed, string? Signature)
{
    public static PencilOnRecord Of(Impression sheet)
    {
        ArgumentNullException.ThrowIfNull(sheet);

        return new PencilOnRecord(sheet.Pencilled, sheet.Titled, sheet.Signed, sheet.Signature);
    }

    /// <summary>Puts the record of a sheet back to this: it was mistyped, and the pencil never said so.</summary>
    public void PutBack(Work work, Impression sheet, Deed deed)
    {
        ArgumentNullException.ThrowIfNull(work);
        ArgumentNullException.ThrowIfNull(sheet);
        ArgumentNullException.ThrowIfNull(deed);

        deed.SetPencilled(sheet.Id, Pencilled, work.OwnWords, work.NumberingOf(sheet)?.Notation);
        deed.Set("impression", sheet.Id, ("titled", Titled), ("signed", Signed), ("signature", Signature));
    }
}

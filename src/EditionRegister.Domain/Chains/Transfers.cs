using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.Works;

namespace EditionRegister.Domain.Chains;

/// <summary>Whose a sheet is, as far as that decides what may be done with it.</summary>
public static class Transfers
{
    /// <summary>Surely the maker's: a known owner who made it.</summary>
    public static bool IsStillTheMakers(Work work, Impression sheet) => sheet.Whose is { State: "known", Person: { } owner } && WhereaboutsDeeds.IsMakers(work, owner);

    /// <summary>Surely not the maker's any more: it passed to somebody, known or not.</summary>
    public static bool HasLeftTheMaker(Work work, Impression sheet) =>
        sheet.Whose is { State: "known", Person: { } owner }
            ? work.Makers.Any() && !WhereaboutsDeeds.IsMakers(work, owner)
            : sheet.Ownership is [.., var last] && MoveKind.Of(last.Kind) is { PassesOn: true };

    /// <summary>It passed to another owner after a step of its whereabouts: by the days where they are sure, else by which was recorded later.</summary>
    public static bool HasPassedOnSince(Impression sheet, WhereaboutsLink link) =>
        sheet.Ownership.Any(transfer => MoveKind.Of(transfer.Kind) is { PassesOn: true } && !transfer.Passed.SurelyBefore(link.Moved) && (link.Moved.SurelyBefore(transfer.Passed) || transfer.V > link.V));

    /// <summary>Sold by an owner who did not make it: not the first sale.</summary>
    public static bool IsResale(Work work, OwnershipLink link) =>
        link.Kind == MoveKind.Sold.Word && link.From is { Person: { } seller } && work.Makers.Any() && !WhereaboutsDeeds.IsMakers(work, seller);

    /// <summary>Whether the one named may pass the sheet on, null being the maker.</summary>
    /// <exception cref="RefusedException">sheet-is-gone, not-theirs-to-sell, sold-already or sold-to-its-owner.</exception>
    internal static void MayPass(Work work, Impression sheet, long? from, long? to)
    {
        var owner = sheet.Whose?.Person;
        var ownerName = WhereInWords.OwnerOf(work, sheet);

        if (sheet.Where is { State: "gone" })
        {
            throw ChainRefusals.Gone(sheet);
        }

        if (from is { } named && owner is not null && owner != named)
        {
            throw ChainRefusals.NotTheirs(sheet, work.Book.NameOf(named), ownerName);
        }

        if (from is null && HasLeftTheMaker(work, sheet))
        {
            throw ChainRefusals.SoldAlready(sheet, ownerName);
        }

        if (to is not null && to == owner)
        {
            throw ChainRefusals.ToThemselves(sheet, ownerName);
        }
    }
}

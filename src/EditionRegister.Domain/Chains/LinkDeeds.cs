using EditionRegister.Domain.Facts;
using EditionRegister.Domain.Impressions;

namespace EditionRegister.Domain.Chains;

/// <summary>Taking back the last link of a chain that was recorded by mistake. The logbook keeps both entries.</summary>
public static class LinkDeeds
{
    /// <param name="sheet">The sheet.</param>
    /// <param name="deed">Where the facts go.</param>
    /// <param name="meant">Ids of the links that are meant; null takes whichever is the last.</param>
    /// <exception cref="RefusedException">first-link-stays, or chain-went-on where the last link is none of those meant.</exception>
    public static void TakeBackMove(Impression sheet, Deed deed, IReadOnlySet<long>? meant = null)
    {
        if (sheet.Whereabouts is not [_, .., var last])
        {
            throw ChainRefusals.FirstLinkStays(sheet);
        }

        Demand(sheet, last.Id, meant);
        ReserveAgain(sheet, last.V, deed);
        deed.Unset("whereabouts", last.Id);
    }

    /// <param name="sheet">The sheet.</param>
    /// <param name="deed">Where the facts go.</param>
    /// <param name="meant">Ids of the links that are meant; null takes whichever is the last.</param>
    /// <exception cref="RefusedException">first-link-stays, or chain-went-on where the last link is none of those meant.</exception>
    public static void TakeBackTransfer(Impression sheet, Deed deed, IReadOnlySet<long>? meant = null)
    {
        if (sheet.Ownership is not [_, .., var last])
        {
            throw ChainRefusals.FirstLinkStays(sheet);
        }

        Demand(sheet, last.Id, meant);
        ReserveAgain(sheet, last.V, deed);
        deed.Unset("ownership", last.Id);
    }

    /// <summary>A reservation that ended by the very entry which is taken back stands again.</summary>
    private static void ReserveAgain(Impression sheet, long entry, Deed deed)
    {
        if (sheet.StandingReservation is null && sheet.Reservations.FirstOrDefault(ended => ended.V == entry) is { } ended)
        {
            deed.Set("reservation", ended.Id, ("standing", "standing"));
        }
    }

    private static void Demand(Impression sheet, long last, IReadOnlySet<long>? meant)
    {
        if (meant?.Contains(last) == false)
        {
            throw ChainRefusals.WentOn(sheet);
        }
    }
}

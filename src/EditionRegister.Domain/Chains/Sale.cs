using EditionRegister.Domain.Dates;
using EditionRegister.Domain.Facts;
using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.Works;

namespace EditionRegister.Domain.Chains;

/// <summary>A sale as it is recorded: to whom, for how much each, by whom. Amounts are minor units of the currency.</summary>
public sealed record Sale
{
    private const int Whole = 10_000;

    /// <summary>Null is a buyer nobody knows.</summary>
    public long? Buyer { get; init; }

    /// <summary>The owner who sells; null is the maker, or an owner not known.</summary>
    public long? Seller { get; init; }

    /// <summary>Who sold on the owner's behalf; whoever has the sheet in consignment, when not said.</summary>
    public long? Agent { get; init; }

    public RecordedDate Date { get; init; } = RecordedDate.None;

    public long? Price { get; init; }

    /// <summary>What the owner receives; worked out from the consignee's share when not said.</summary>
    public long? Net { get; init; }

    public string? Currency { get; init; }

    public string? Note { get; init; }

    /// <summary>The buyer took the sheet along.</summary>
    public bool Collected { get; init; }

    /// <summary>Also where the sheet is reserved for, or on approval with, somebody else.</summary>
    public bool DespiteReservation { get; init; }

    /// <summary>What the owner receives of a price; the share is rounded down to a whole minor unit, which is to the owner's favour.</summary>
    /// <param name="price">Minor units.</param>
    /// <param name="rate">The consignee's share in hundredths of a per cent.</param>
    public static long NetOf(long price, int rate) => price - (price * rate / Whole);

    /// <exception cref="RefusedException">The seller does not own it, it is kept for another, or the dates run backwards.</exception>
    public void Record(Work work, IReadOnlyList<Impression> sheets, Deed deed)
    {
        if (Net > Price)
        {
            throw ChainRefusals.NetAbovePrice();
        }

        foreach (var sheet in sheets)
        {
            Record(work, sheet, deed);
        }
    }

    private void Record(Work work, Impression sheet, Deed deed)
    {
        Transfers.MayPass(work, sheet, Seller, Buyer);
        ChainDates.RunForwards(work, sheet, Date, sheet.Ownership.Select(link => (link.Kind, link.Passed)));

        var to = Buyer is { } buyer ? Owner.Known(buyer) : Owner.Unknown;
        var consigned = Consignments.StandingOf(work, sheet);
        var agent = Agent ?? (consigned is null ? null : Consignments.HandsOf(work, sheet)[^1]);

        // The share is the one the owner agreed to with the first consignee, whoever of them sold it.
        var net = Net ?? (Price is { } price && consigned?.Rate is { } rate ? NetOf(price, rate) : null);
        Reservations.Settle(work, sheet, Buyer, agent, DespiteReservation, deed);
        var link = ChainFacts.Pass(sheet.Id, sheet.Ownership.Count + 1, MoveKind.Sold, sheet.Whose, to, Date, deed);
        deed.Set("ownership", link,
            ("agent", agent), ("price", Price), ("net", net), ("currency", Price is null && net is null ? null : Currency), ("note", Note));

        if (Collected)
        {
            WhereaboutsDeeds.HandOver(work, sheet, to, Date, note: null, deed);
        }
    }
}

using EditionRegister.Domain.Dates;
using EditionRegister.Domain.Facts;
using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.Works;

namespace EditionRegister.Domain.Chains;

/// <summary>A sale as it is recorded: to whom, for how much each, by whom. Amounts are minor units of the currency.</summary>
public sealed record Sale
{
    /// <summary>Null is a buyer nobody knows.</summary>
    public long? Buyer { get; init; }

    /// <summary>The owner who sells; null is the maker, or an owner not known.</summary>
    public long? Seller { get; init; }

    /// <summary>Who sold on the owner's behalf; the consignee who has the sheet, when not said.</summary>
    public long? Agent { get; init; }

    public RecordedDate Date { get; init; } = RecordedDate.None;

    public long? Price { get; init; }

    /// <summary>What the owner receives; worked out from the consignee's share when not said.</summary>
    public long? Net { get; init; }

    public string? Currency { get; init; }

    public string? Note { get; init; }

    /// <summary>The buyer took the sheet along.</summary>
    public bool Collected { get; init; }

    /// <exception cref="RefusedException">The seller does not own it, or the dates run backwards.</exception>
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
        Owns(work, sheet);
        ChainDates.RunForwards(work, sheet, Date, sheet.Ownership.Select(link => (link.Kind, link.Passed)));

        var to = Buyer is { } buyer ? Owner.Known(buyer) : Owner.Unknown;
        var consigned = sheet.Whereabouts is [.., { Kind: "consigned" } last] ? last : null;
        var net = Net ?? (Price is { } price && consigned?.Rate is { } rate ? price - (price * rate / 10_000) : null);
        var link = ChainFacts.Pass(sheet.Id, sheet.Ownership.Count + 1, MoveKind.Sold, sheet.Whose, to, Date, deed);
        deed.Set("ownership", link,
            ("agent", Agent ?? consigned?.To.Holder), ("price", Price), ("net", net), ("currency", Price is null && net is null ? null : Currency), ("note", Note));

        if (Collected)
        {
            WhereaboutsDeeds.HandOver(work, sheet, to, Date, deed);
        }
    }

    private void Owns(Work work, Impression sheet)
    {
        var owner = sheet.Whose?.Person;
        var ownerName = WhereInWords.OwnerOf(work, sheet);

        if (sheet.Where is { State: "gone" })
        {
            throw ChainRefusals.Gone(sheet);
        }

        if (Seller is { } seller && owner is not null && owner != seller)
        {
            throw ChainRefusals.NotTheirs(sheet, work.Book.NameOf(seller), ownerName);
        }

        if (Seller is null && owner is { } known && work.Makers.Any() && work.MakersAndEstate.All(maker => maker.Id != known))
        {
            throw ChainRefusals.SoldAlready(sheet, ownerName);
        }

        if (Seller is null && owner is null && sheet.Ownership.Any(link => link.Kind == MoveKind.Sold.Word))
        {
            throw ChainRefusals.SoldAlready(sheet, ownerName);
        }

        if (Buyer is not null && Buyer == owner)
        {
            throw ChainRefusals.ToThemselves(sheet, ownerName);
        }
    }
}

using EditionRegister.Domain.Dates;
using EditionRegister.Domain.Facts;
using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.Works;

namespace EditionRegister.Domain.Chains;

/// <summary>The buyer gives a sheet back: it belongs again to the one who sold it, with the money given back or not.</summary>
public sealed record BuyersReturn
{
    public RecordedDate Date { get; init; } = RecordedDate.None;

    /// <summary>What was given back for each, in minor units of <see cref="Currency"/>; null where nobody said.</summary>
    public long? Refund { get; init; }

    public string? Currency { get; init; }

    /// <summary>The sheet came along.</summary>
    public bool IsHere { get; init; }

    /// <summary>Where it was put; null for the maker's hands. Only where it came along.</summary>
    public long? Place { get; init; }

    public string? Note { get; init; }

    /// <exception cref="RefusedException">not-sold-last, or the dates run backwards.</exception>
    public void Record(Work work, IReadOnlyList<Impression> sheets, Deed deed)
    {
        foreach (var sheet in sheets)
        {
            if (sheet.Ownership is not [_, .., { Kind: "sold" or "exchanged", From: { } seller }])
            {
                throw MoveRefusals.NotSoldLast(sheet, WhereInWords.OwnerOf(work, sheet));
            }

            ChainDates.RunForwards(work, sheet, Date, sheet.Ownership.Select(link => (link.Kind, link.Passed)));
            var link = ChainFacts.Pass(sheet.Id, sheet.Ownership.Count + 1, MoveKind.ReturnedByBuyer, sheet.Whose, seller, Date, deed);
            deed.Set("ownership", link, ("price", Refund), ("currency", Refund is null ? null : Currency), ("note", Note));

            if (IsHere)
            {
                WhereaboutsDeeds.Move(work, sheet, MoveKind.Returned, WhereaboutsDeeds.Home(work, Place), Date, note: null, deed);
            }
        }
    }
}

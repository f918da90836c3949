using EditionRegister.Store;
using EditionRegister.UseCases.Choosing;
using EditionRegister.UseCases.Wording;

namespace EditionRegister.UseCases.Impressions;

/// <summary>Says what sheets are offered for, and whether they are for sale at all.</summary>
public sealed class PriceImpressions(RegisterStore store)
{
    /// <param name="choice">Which sheets.</param>
    /// <param name="asking">Minor units, or null to leave the price as it is.</param>
    /// <param name="currency">ISO 4217.</param>
    /// <param name="forSale">by-custom, yes, no or unknown; null leaves it.</param>
    /// <param name="seen">The sheets as the caller saw them, or null when the caller did not look.</param>
    /// <exception cref="Domain.RefusedException">changed-meanwhile with both values, or a choice that finds nothing.</exception>
    public int Run(ImpressionChoice choice, long? asking, string? currency, string? forSale, SheetsAsSeen? seen = null) =>
        DeedOnChosen.Run(store, "price", choice, (_, chosen, deed) =>
        {
            foreach (var sheet in chosen.Sheets)
            {
                seen?.Demand(
                    sheet,
                    ("its asking price", PricesShown.Show(sheet.Asking, sheet.AskingCurrency), PricesShown.Show(asking, currency)),
                    ("whether it is for sale", Called.Plain(sheet.ForSale), forSale is null ? null : Called.Plain(forSale)));

                if (asking is not null)
                {
                    deed.Set("impression", sheet.Id, ("asking", asking), ("asking_currency", currency));
                }

                if (forSale is not null)
                {
                    deed.Set("impression", sheet.Id, ("for_sale", forSale));
                }
            }
        });
}

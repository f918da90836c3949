using EditionRegister.Domain.Impressions;
using EditionRegister.Store;
using EditionRegister.UseCases.Choosing;

namespace EditionRegister.UseCases.Impressions;

/// <summary>Sorts dry pulls: kept, spare, or left out for a fault.</summary>
public sealed class SortPulls(RegisterStore store)
{
    /// <summary>Answers how many sheets were sorted.</summary>
    /// <exception cref="Domain.RefusedException">sheet-is-numbered, fault-missing, fault-unknown, or a choice that finds nothing.</exception>
    public int Run(ImpressionChoice choice, string standing, string? fault = null, string? note = null) =>
        DeedOnChosen.Run(store, "sort-pulls", choice, (_, chosen, deed) => SortingDeeds.Sort(chosen.Work, chosen.Sheets, standing, fault, note, deed));
}

/// <summary>Records what stands on sheets: number, title, signature and inscriptions, as written.</summary>
public sealed class InscribeImpressions(RegisterStore store)
{
    /// <summary>Answers how many sheets were inscribed.</summary>
    /// <exception cref="Domain.RefusedException">inscription-empty, one-sheet-only, sheet-not-numbered, or a choice that finds nothing.</exception>
    public int Run(ImpressionChoice choice, WhatStandsOnIt what) =>
        DeedOnChosen.Run(store, "inscribe", choice, (_, chosen, deed) => what.Record(chosen.Work, chosen.Sheets, deed));
}

/// <summary>Says what sheets are offered for, and whether they are for sale at all.</summary>
public sealed class PriceImpressions(RegisterStore store)
{
    /// <param name="choice">Which sheets.</param>
    /// <param name="asking">Minor units, or null to leave the price as it is.</param>
    /// <param name="currency">ISO 4217.</param>
    /// <param name="forSale">by-custom, yes, no or unknown; null leaves it.</param>
    public int Run(ImpressionChoice choice, long? asking, string? currency, string? forSale) =>
        DeedOnChosen.Run(store, "price", choice, (_, chosen, deed) =>
        {
            foreach (var sheet in chosen.Sheets)
            {
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

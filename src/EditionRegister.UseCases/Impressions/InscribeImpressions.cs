using EditionRegister.Domain.Impressions;
using EditionRegister.Store;
using EditionRegister.UseCases.Choosing;

namespace EditionRegister.UseCases.Impressions;

/// <summary>Records what stands on sheets: number, title, signature and inscriptions, as written.</summary>
public sealed class InscribeImpressions(RegisterStore store)
{
    /// <summary>Answers how many sheets were inscribed.</summary>
    /// <exception cref="Domain.RefusedException">inscription-empty, one-sheet-only, sheet-not-numbered, or a choice that finds nothing.</exception>
    public int Run(ImpressionChoice choice, WhatStandsOnIt what) =>
        DeedOnChosen.Run(store, "inscribe", choice, (_, chosen, deed) => what.Record(chosen.Work, chosen.Sheets, deed));
}

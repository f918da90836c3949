using EditionRegister.Domain.Impressions;
using EditionRegister.Store;
using EditionRegister.UseCases.Choosing;

namespace EditionRegister.UseCases.Impressions;

/// <summary>Records what stands on sheets: number, title, signature and inscriptions, as written.</summary>
public sealed class InscribeImpressions(RegisterStore store)
{
    /// <summary>Answers how many sheets were inscribed.</summary>
    /// <param name="choice">Which sheets.</param>
    /// <param name="what">What was read on them.</param>
    /// <param name="seen">The sheets as the caller saw them, or null when the caller did not look.</param>
    /// <exception cref="Domain.RefusedException">inscription-empty, one-sheet-only, sheet-not-numbered, changed-meanwhile, or a choice that finds nothing.</exception>
    public int Run(ImpressionChoice choice, WhatStandsOnIt what, SheetsAsSeen? seen = null) => DeedOnChosen.Run(store, "inscribe", choice, (_, chosen, deed) =>
    {
        foreach (var sheet in chosen.Sheets)
        {
            seen?.Demand(
                sheet,
                ("the pencilled number", sheet.Pencilled, what.Pencilled ?? (what.AsSpelled ? chosen.Work.NumberingOf(sheet)?.Spell(sheet.Number) : null)),
                ("the title on it", sheet.Titled, what.Titled ?? (what.AsSpelled ? chosen.Work.Title : null)),
                ("whether it is signed", sheet.Signed, what.Signed),
                ("the signature", sheet.Signature, what.Signature),
                ("its condition", sheet.Condition, what.Condition));
        }

        what.Record(chosen.Work, chosen.Sheets, deed);
    });
}

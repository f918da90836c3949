using EditionRegister.Domain.Impressions;
using EditionRegister.Store;
using EditionRegister.UseCases.Choosing;

namespace EditionRegister.UseCases.Impressions;

/// <summary>Says how sheets differ from the others of their edition.</summary>
public sealed class VarySheets(RegisterStore store)
{
    /// <param name="choice">Which sheets.</param>
    /// <param name="variant">How they differ; null takes it back.</param>
    /// <param name="seen">The sheets as the caller saw them, or null when the caller did not look.</param>
    /// <exception cref="Domain.RefusedException">variant-too-long, changed-meanwhile, or a choice that finds nothing.</exception>
    public int Run(ImpressionChoice choice, string? variant, SheetsAsSeen? seen = null) => DeedOnChosen.Run(store, "vary-sheets", choice, (_, chosen, deed) =>
    {
        foreach (var sheet in chosen.Sheets)
        {
            seen?.Demand(sheet, ("how it differs", sheet.Variant, variant));
        }

        SheetWords.Vary(chosen.Sheets, variant, deed);
    });
}

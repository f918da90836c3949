using EditionRegister.Domain.Impressions;
using EditionRegister.Store;
using EditionRegister.UseCases.Choosing;

namespace EditionRegister.UseCases.Impressions;

/// <summary>Records to whom copies are dedicated, as it stands on them.</summary>
public sealed class DedicateSheets(RegisterStore store)
{
    /// <param name="choice">Which sheets.</param>
    /// <param name="dedication">As written; null takes it back.</param>
    /// <param name="seen">The sheets as the caller saw them, or null when the caller did not look.</param>
    /// <exception cref="Domain.RefusedException">dedication-too-long, changed-meanwhile, or a choice that finds nothing.</exception>
    public int Run(ImpressionChoice choice, string? dedication, SheetsAsSeen? seen = null) => DeedOnChosen.Run(store, "dedicate-sheets", choice, (_, chosen, deed) =>
    {
        foreach (var sheet in chosen.Sheets)
        {
            seen?.Demand(sheet, ("its dedication", sheet.Dedication, dedication));
        }

        SheetWords.Dedicate(chosen.Sheets, dedication, deed);
    });
}

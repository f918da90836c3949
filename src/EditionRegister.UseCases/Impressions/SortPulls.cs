using EditionRegister.Domain.Impressions;
using EditionRegister.Store;
using EditionRegister.UseCases.Choosing;
using EditionRegister.UseCases.Wording;

namespace EditionRegister.UseCases.Impressions;

/// <summary>Sorts dry pulls: kept, spare, or left out for a fault.</summary>
public sealed class SortPulls(RegisterStore store)
{
    /// <summary>Answers how many sheets were sorted.</summary>
    /// <param name="choice">Which sheets.</param>
    /// <param name="standing">One of <see cref="SortingDeeds.Standings"/>.</param>
    /// <param name="fault">Why they are left out.</param>
    /// <param name="note">More about the fault.</param>
    /// <param name="seen">The sheets as the caller saw them, or null when the caller did not look.</param>
    /// <exception cref="Domain.RefusedException">sheet-is-numbered, fault-missing, fault-unknown, changed-meanwhile, or a choice that finds nothing.</exception>
    public int Run(ImpressionChoice choice, string standing, string? fault = null, string? note = null, SheetsAsSeen? seen = null) =>
        DeedOnChosen.Run(store, "sort-pulls", choice, (_, chosen, deed) =>
        {
            foreach (var sheet in chosen.Sheets)
            {
                seen?.Demand(sheet, ("its standing", Called.Plain(sheet.Standing), Called.Plain(standing)));
            }

            SortingDeeds.Sort(chosen.Work, chosen.Sheets, standing, fault, note, deed);
        });
}

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

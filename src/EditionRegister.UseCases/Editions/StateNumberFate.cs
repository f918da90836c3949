using EditionRegister.Domain.Editions;
using EditionRegister.Domain.Facts;
using EditionRegister.Domain.Numbers;
using EditionRegister.Store;
using EditionRegister.UseCases.Works;

namespace EditionRegister.UseCases.Editions;

/// <summary>States what became of numbers no sheet has: never printed, void, elsewhere, unknown, or open again.</summary>
public sealed class StateNumberFate(RegisterStore store)
{
    /// <summary>Answers how many numbers were stated.</summary>
    public int Run(long edition, string numbers, string fate, string? note) => store.Write("state-number-fate", writing =>
    {
        var (work, found) = writing.Read.EditionOrRefuse(edition);
        var chosen = NumberGiving.Choose(work, found, NumberRanges.Read(numbers, work.OwnWords));
        NumberingDeeds.StateFate(work, found, chosen, fate, note, writing.On(Root.Work(work.Id)));

        return chosen.Count;
    });
}

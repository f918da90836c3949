using EditionRegister.Domain.Dates;
using EditionRegister.Domain.Editions;
using EditionRegister.Domain.Facts;
using EditionRegister.Store;
using EditionRegister.UseCases.Works;

namespace EditionRegister.UseCases.Editions;

/// <summary>Closes an edition: every number is accounted for, and the matrix's fate is stated.</summary>
public sealed class CloseEdition(RegisterStore store)
{
    /// <exception cref="Domain.RefusedException">edition-not-accounted-for, with everything that is missing.</exception>
    public bool Run(long edition, RecordedDate? on = null) => store.Write("close-edition", writing =>
    {
        var (work, found) = writing.Read.EditionOrRefuse(edition);
        NumberingDeeds.Close(work, found, on ?? Today.Of(store), writing.On(Root.Work(work.Id)));

        return true;
    });
}

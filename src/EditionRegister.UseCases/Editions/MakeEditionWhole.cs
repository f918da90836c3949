using EditionRegister.Domain.Editions;
using EditionRegister.Domain.Facts;
using EditionRegister.Store;
using EditionRegister.UseCases.Works;

namespace EditionRegister.UseCases.Editions;

/// <summary>Says that an edition of ours, known in part so far, is now wholly accounted for here.</summary>
public sealed class MakeEditionWhole(RegisterStore store)
{
    /// <exception cref="Domain.RefusedException">edition-not-found, edition-not-all-known, edition-whole-already, edition-not-ours-whole.</exception>
    public bool Run(long edition) => store.Write("make-edition-whole", writing =>
    {
        var (work, found) = writing.Read.EditionOrRefuse(edition);
        MakingWhole.Make(work, found, writing.On(Root.Work(work.Id)));

        return true;
    });
}

using EditionRegister.Domain.Editions;
using EditionRegister.Domain.Facts;
using EditionRegister.Store;
using EditionRegister.UseCases.Works;

namespace EditionRegister.UseCases.Editions;

/// <summary>Ends an edition of which fewer were printed than declared.</summary>
public sealed class EndShort(RegisterStore store)
{
    /// <exception cref="Domain.RefusedException">edition-closed-already, short-edition-not-ours-whole, edition-not-short or nothing-printed.</exception>
    public FellShort Run(long edition, string? note = null) => store.Write("end-short", writing =>
    {
        var (work, found) = writing.Read.EditionOrRefuse(edition);

        return ShortEdition.End(work, found, note, writing.On(Root.Work(work.Id)));
    });
}

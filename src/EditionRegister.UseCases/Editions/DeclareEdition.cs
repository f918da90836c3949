using EditionRegister.Domain.Editions;
using EditionRegister.Domain.Facts;
using EditionRegister.Store;
using EditionRegister.UseCases.Works;

namespace EditionRegister.UseCases.Editions;

/// <summary>Declares an edition of a work, with its numberings.</summary>
public sealed class DeclareEdition(RegisterStore store)
{
    /// <exception cref="Domain.RefusedException">One of <see cref="EditionRefusals"/>.</exception>
    public long Run(long work, NewEdition edition) => store.Write("declare-edition", writing =>
        edition.Declare(writing.Read.WorkOrRefuse(work), writing.On(Root.Work(work))));
}

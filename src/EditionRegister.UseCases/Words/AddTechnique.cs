using EditionRegister.Domain.Facts;
using EditionRegister.Domain.Words;
using EditionRegister.Store;

namespace EditionRegister.UseCases.Words;

/// <summary>Adds a technique to the list for this register.</summary>
public sealed class AddTechnique(RegisterStore store)
{
    /// <exception cref="Domain.RefusedException">word-not-kebab, word-known-already, word-name-missing or technique-id-unfit.</exception>
    public long Run(NewTechnique technique) => store.Write("add-technique", writing => technique.Record(writing.Read.OwnWords, writing.On(Root.Register)));
}

using EditionRegister.Domain.Facts;
using EditionRegister.Domain.Words;
using EditionRegister.Store;

namespace EditionRegister.UseCases.Words;

/// <summary>Adds a fault to the list for this register.</summary>
public sealed class AddFault(RegisterStore store)
{
    /// <exception cref="Domain.RefusedException">word-not-kebab, word-known-already or word-name-missing.</exception>
    public long Run(NewFault fault) => store.Write("add-fault", writing => fault.Record(writing.Read.OwnWords, writing.On(Root.Register)));
}

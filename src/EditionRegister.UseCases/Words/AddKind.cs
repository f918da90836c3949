using EditionRegister.Domain.Facts;
using EditionRegister.Domain.Words;
using EditionRegister.Store;

namespace EditionRegister.UseCases.Words;

/// <summary>Makes a kind of numbering of the register's own.</summary>
public sealed class AddKind(RegisterStore store)
{
    /// <exception cref="Domain.RefusedException">One of <see cref="WordRefusals"/>.</exception>
    public long Run(NewKind kind) => store.Write("add-kind", writing => kind.Record(writing.Read.OwnWords, writing.On(Root.Register)));
}

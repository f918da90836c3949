using EditionRegister.Domain.Facts;
using EditionRegister.Domain.Words;
using EditionRegister.Store;

namespace EditionRegister.UseCases.Words;

/// <summary>Changes a kind of numbering of the register's own; once a numbering is of it, only what it is called and whether it is for sale.</summary>
public sealed class EditKind(RegisterStore store)
{
    /// <exception cref="Domain.RefusedException">kind-not-own, kind-in-use, kind-nothing-said, or what a new kind is refused for.</exception>
    public bool Run(string word, KindCorrection correction) => store.Write("edit-kind", writing =>
    {
        var (id, numberings) = writing.Read.KindInUse(word) ?? throw WordRefusals.NoOwnKind(word);
        correction.Record(writing.Read.OwnWords, word, id, numberings, writing.On(Root.Register));

        return true;
    });
}

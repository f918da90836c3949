using EditionRegister.Domain.Facts;
using EditionRegister.Domain.Sets;
using EditionRegister.Store;
using EditionRegister.UseCases.Works;

namespace EditionRegister.UseCases.Sets;

/// <summary>Puts right what was recorded of a set of prints.</summary>
public sealed class EditSet(RegisterStore store)
{
    /// <summary>Null leaves a fact as it is.</summary>
    /// <exception cref="Domain.RefusedException">work-not-found, set-not-made or set-correction-empty.</exception>
    public void Run(long work, string? form, string? signedOn, string? note) => store.Write("edit-set", writing =>
    {
        SetDeeds.Correct(writing.Read.WorkOrRefuse(work), form, signedOn, note, writing.On(Root.Work(work)));

        return work;
    });
}

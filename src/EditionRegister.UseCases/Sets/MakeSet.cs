using EditionRegister.Domain.Facts;
using EditionRegister.Domain.Sets;
using EditionRegister.Store;
using EditionRegister.UseCases.Works;

namespace EditionRegister.UseCases.Sets;

/// <summary>Makes a work a set of prints, whose own impressions are its copies.</summary>
public sealed class MakeSet(RegisterStore store)
{
    /// <param name="work">The work.</param>
    /// <param name="form">One of <see cref="SetForm.Words"/>.</param>
    /// <param name="signedOn">One of <see cref="SetForm.SignedOn"/>.</param>
    /// <param name="note">As written.</param>
    /// <exception cref="Domain.RefusedException">work-not-found or set-made-already.</exception>
    public void Run(long work, string form, string signedOn = "unknown", string? note = null) => store.Write("make-set", writing =>
    {
        SetDeeds.Make(writing.Read.WorkOrRefuse(work), form, signedOn, note, writing.On(Root.Work(work)));

        return work;
    });
}

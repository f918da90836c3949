using EditionRegister.Domain.Facts;
using EditionRegister.Domain.Works;

namespace EditionRegister.Domain.Words;

/// <summary>A fault that a register adds to the list for itself.</summary>
public sealed record NewFault(string Word, string Name)
{
    /// <exception cref="RefusedException">word-not-kebab, word-known-already or word-name-missing.</exception>
    public long Record(OwnWords own, Deed deed)
    {
        ArgumentNullException.ThrowIfNull(own);
        ArgumentNullException.ThrowIfNull(deed);
        OwnWordRules.Free("fault", Word, own.FaultOf(Word)?.Name);
        OwnWordRules.Named(Name);

        var id = deed.NewId("fault");
        deed.Set("fault", id, ("word", Word), ("name", Name.Trim()));

        return id;
    }
}

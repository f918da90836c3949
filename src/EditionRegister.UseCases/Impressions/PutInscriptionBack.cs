using EditionRegister.Domain.Impressions;
using EditionRegister.Store;
using EditionRegister.UseCases.Choosing;

namespace EditionRegister.UseCases.Impressions;

/// <summary>Puts the record of what is pencilled on one sheet back to what it was: it was recorded by mistake.</summary>
public sealed class PutInscriptionBack(RegisterStore store)
{
    /// <exception cref="Domain.RefusedException">code-not-found, code-misread.</exception>
    public int Run(string code, PencilOnRecord before) =>
        DeedOnChosen.Run(store, "put-inscription-back", ImpressionChoice.OfCode(code), (_, chosen, deed) => before.PutBack(chosen.Work, chosen.Sheets[0], deed));
}

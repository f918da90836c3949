using EditionRegister.Domain.Impressions;
using EditionRegister.Store;
using EditionRegister.UseCases.Choosing;

namespace EditionRegister.UseCases.Impressions;

/// <summary>Records that something was altered on a sheet itself: what stood there, what stands there now, why and when.</summary>
public sealed class AlterSheet(RegisterStore store)
{
    /// <exception cref="Domain.RefusedException">code-not-found, or one of <see cref="AlterationRefusals"/>.</exception>
    public void Run(string code, Alteration alteration) => DeedOnChosen.Run(store, "alter-sheet", ImpressionChoice.OfCode(code), (_, chosen, deed) =>
        (alteration.Changed.IsKnown ? alteration : alteration with { Changed = Today.Of(store) }).Record(chosen.Work, chosen.Sheets[0], deed));

    /// <summary>The last change of a sheet was recorded by mistake.</summary>
    /// <exception cref="Domain.RefusedException">code-not-found or alteration-not-there.</exception>
    public void TakeBack(string code) => DeedOnChosen.Run(store, "take-alteration-back", ImpressionChoice.OfCode(code), (_, chosen, deed) => Alteration.TakeBack(chosen.Work, chosen.Sheets[0], deed));
}

using EditionRegister.Domain.Facts;
using EditionRegister.Domain.Shows;
using EditionRegister.Store;
using EditionRegister.UseCases.Choosing;

namespace EditionRegister.UseCases.Shows;

/// <summary>Lists impressions for a show, in the order in which they are chosen.</summary>
public sealed class AddToShow(RegisterStore store)
{
    /// <summary>Answers how many sheets that were.</summary>
    /// <exception cref="Domain.RefusedException">show-not-found, show-lists-already or show-sheet-left-out, or what was chosen cannot be found.</exception>
    public int Run(long show, ImpressionChoice choice) => store.Write("add-to-show", writing =>
    {
        var found = writing.Read.ShowOrRefuse(show);
        var sheets = ImpressionsChosen.Find(writing.Read, choice).SelectMany(ofWork => ofWork.Sheets).ToList();
        ShowDeeds.Add(found, sheets, writing.On(Root.Show(show)));

        return sheets.Count;
    });
}

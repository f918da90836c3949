using EditionRegister.Domain.Facts;
using EditionRegister.Domain.Shows;
using EditionRegister.Store;
using EditionRegister.UseCases.Choosing;

namespace EditionRegister.UseCases.Shows;

/// <summary>Takes impressions off the list of a show; that they were on it stays on record.</summary>
public sealed class RemoveFromShow(RegisterStore store)
{
    /// <summary>Answers how many sheets that were.</summary>
    /// <exception cref="Domain.RefusedException">show-not-found, show-does-not-list, or what was chosen cannot be found.</exception>
    public int Run(long show, ImpressionChoice choice) => store.Write("remove-from-show", writing =>
    {
        var found = writing.Read.ShowOrRefuse(show);
        var sheets = ImpressionsChosen.Find(writing.Read, choice).SelectMany(ofWork => ofWork.Sheets).ToList();
        ShowDeeds.Remove(found, sheets, writing.On(Root.Show(show)));

        return sheets.Count;
    });
}

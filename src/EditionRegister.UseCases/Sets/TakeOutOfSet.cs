using EditionRegister.Domain.Facts;
using EditionRegister.Domain.Sets;
using EditionRegister.Store;
using EditionRegister.UseCases.Choosing;
using EditionRegister.UseCases.Works;

namespace EditionRegister.UseCases.Sets;

/// <summary>Takes sheets out of the copies of a set.</summary>
public sealed class TakeOutOfSet(RegisterStore store)
{
    /// <summary>Answers how many were taken out; they stay where they are.</summary>
    /// <exception cref="Domain.RefusedException">set-not-made or sheet-in-no-copy.</exception>
    public int Run(long set, ImpressionChoice sheets) => store.Write("take-out-of-set", writing =>
    {
        var work = writing.Read.WorkOrRefuse(set);
        var chosen = ImpressionsChosen.Find(writing.Read, sheets).SelectMany(ofWork => ofWork.Sheets).ToList();

        foreach (var sheet in chosen)
        {
            SetDeeds.TakeOut(work, sheet, writing.On(Root.Work(set)));
        }

        return chosen.Count;
    });
}

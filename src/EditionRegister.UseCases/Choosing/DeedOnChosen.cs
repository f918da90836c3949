using EditionRegister.Domain.Facts;
using EditionRegister.Store;
using EditionRegister.Store.Logbook;

namespace EditionRegister.UseCases.Choosing;

/// <summary>Does one thing to every impression chosen: one entry for each work, all of them under one batch, or nothing at all.</summary>
internal static class DeedOnChosen
{
    /// <summary>Answers how many sheets it was done to.</summary>
    public static int Run(RegisterStore store, string name, ImpressionChoice choice, Action<Writing, ChosenOfWork, Deed> deed) => store.Write(name, writing =>
    {
        var chosen = ImpressionsChosen.Find(writing.Read, choice);

        foreach (var ofWork in chosen)
        {
            deed(writing, ofWork, writing.On(Root.Work(ofWork.Work.Id)));
        }

        return chosen.Sum(ofWork => ofWork.Sheets.Count);
    });
}

using EditionRegister.Domain.Facts;
using EditionRegister.Store;
using EditionRegister.Store.Logbook;

namespace EditionRegister.UseCases.Choosing;

/// <summary>Does one thing to every impression chosen: one entry for each work, all of them under one batch, or nothing at all.</summary>
internal static class DeedOnChosen
{
    /// <summary>Answers how many sheets it was done to; sheets that went with a copy of a set are not counted.</summary>
    public static int Run(RegisterStore store, string name, ImpressionChoice choice, Action<Writing, ChosenOfWork, Deed> deed) => store.Write(name, writing =>
    {
        var chosen = ImpressionsChosen.FindWithSets(writing.Read, choice, GoesWithCopy.In(name));

        foreach (var ofWork in chosen)
        {
            deed(writing, ofWork, writing.On(Root.Work(ofWork.Work.Id)));
        }

        return chosen.Where(ofWork => !ofWork.GoWithCopy).Sum(ofWork => ofWork.Sheets.Count);
    });
}

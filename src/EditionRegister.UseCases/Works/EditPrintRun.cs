using EditionRegister.Domain.Facts;
using EditionRegister.Domain.Works;
using EditionRegister.Store;

namespace EditionRegister.UseCases.Works;

/// <summary>Corrects what was counted and measured of a print run.</summary>
public sealed class EditPrintRun(RegisterStore store)
{
    /// <param name="work">The work.</param>
    /// <param name="run">The run's place among its runs.</param>
    /// <param name="correction">What is put right.</param>
    /// <param name="seen">The entry that had last written the run when the caller looked at it.</param>
    /// <exception cref="Domain.RefusedException">work-not-found, run-not-found, sheets-do-not-balance, changed-meanwhile.</exception>
    public bool Run(long work, int run, PrintRunCorrection correction, long? seen = null) => store.Write("edit-print-run", writing =>
    {
        var found = writing.Read.WorkOrRefuse(work);
        var meant = found.Runs.FirstOrDefault(one => one.Ordinal == run) ?? throw WorkRefusals.NoSuchRun(found, run);

        foreach (var (fact, value) in correction.Changes())
        {
            writing.StillAsSeen("print_run", meant.Id, seen, fact, value);
        }

        correction.Record(found, meant, writing.On(Root.Work(work)));

        return true;
    });
}

using EditionRegister.Domain.Facts;
using EditionRegister.Domain.Works;
using EditionRegister.Store;

namespace EditionRegister.UseCases.Works;

/// <summary>Corrects what was counted and measured of a print run.</summary>
public sealed class EditPrintRun(RegisterStore store)
{
    /// <exception cref="Domain.RefusedException">work-not-found, run-not-found, sheets-do-not-balance.</exception>
    public bool Run(long work, int run, PrintRunCorrection correction) => store.Write("edit-print-run", writing =>
    {
        var found = writing.Read.WorkOrRefuse(work);
        correction.Record(found, found.Runs.FirstOrDefault(one => one.Ordinal == run) ?? throw WorkRefusals.NoSuchRun(found, run), writing.On(Root.Work(work)));

        return true;
    });
}

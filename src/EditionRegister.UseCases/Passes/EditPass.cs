using EditionRegister.Domain.Facts;
using EditionRegister.Domain.Passes;
using EditionRegister.Domain.Works;
using EditionRegister.Store;
using EditionRegister.UseCases.Works;

namespace EditionRegister.UseCases.Passes;

/// <summary>Corrects what was recorded of a pass; the passes after it must still find their sheets.</summary>
public sealed class EditPass(RegisterStore store)
{
    /// <param name="work">The work.</param>
    /// <param name="run">The run's place among its runs.</param>
    /// <param name="pass">The pass's place in the run.</param>
    /// <param name="correction">What is put right.</param>
    /// <param name="seen">The entry that had last written the pass when the caller looked at it.</param>
    /// <exception cref="Domain.RefusedException">work-not-found, run-not-found, pass-not-found, pass-does-not-balance, changed-meanwhile and others of <see cref="PassRefusals"/>.</exception>
    public bool Run(long work, int run, int pass, PassTyped correction, long? seen = null) => store.Write("edit-pass", writing =>
    {
        var found = writing.Read.WorkOrRefuse(work);
        var meant = found.Runs.FirstOrDefault(one => one.Ordinal == run) ?? throw WorkRefusals.NoSuchRun(found, run);
        var before = meant.Passes.FirstOrDefault(one => one.Ordinal == pass) ?? throw PassRefusals.NotFound(found, meant, pass);

        foreach (var (fact, value) in correction.Words.Changes().DefaultIfEmpty(("sheets_out", before.SheetsOut)))
        {
            writing.StillAsSeen("pass", before.Id, seen, fact, value);
        }

        PassDeeds.PutRight(found, meant, before, correction.Read(found, meant, writing.Read.Book), writing.On(Root.Work(work)));

        return true;
    });
}

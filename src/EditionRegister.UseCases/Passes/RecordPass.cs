using EditionRegister.Domain.Facts;
using EditionRegister.Domain.Passes;
using EditionRegister.Domain.Works;
using EditionRegister.Store;
using EditionRegister.UseCases.Works;

namespace EditionRegister.UseCases.Passes;

/// <summary>Records one trip of a run's sheets through the press or under the hand: the next one, or the last one again with what is different.</summary>
public sealed class RecordPass(RegisterStore store)
{
    /// <param name="work">The work.</param>
    /// <param name="run">The run's place among its runs.</param>
    /// <param name="pass">What is said of it.</param>
    /// <returns>Its place in the run.</returns>
    /// <exception cref="Domain.RefusedException">work-not-found, run-not-found, pass-does-not-balance, pass-takes-in-too-many, matrix-cannot-print and others of <see cref="PassRefusals"/>.</exception>
    public int Run(long work, int run, PassTyped pass) => Next(work, run, pass, "record-pass", PassDeeds.Record);

    /// <exception cref="Domain.RefusedException">pass-not-found where none was recorded; else as <see cref="Run"/>.</exception>
    public int Again(long work, int run, PassTyped changes) => Next(work, run, changes, "repeat-pass", PassDeeds.Again);

    private int Next(long work, int run, PassTyped typed, string name, Func<Work, PrintRun, PassWords, Deed, Pass> record) => store.Write(name, writing =>
    {
        var found = writing.Read.WorkOrRefuse(work);
        var meant = found.Runs.FirstOrDefault(one => one.Ordinal == run) ?? throw WorkRefusals.NoSuchRun(found, run);

        return record(found, meant, typed.Read(found, meant, writing.Read.Book), writing.On(Root.Work(work))).Ordinal;
    });
}

using EditionRegister.Domain.Facts;
using EditionRegister.Domain.Passes;
using EditionRegister.Domain.Works;
using EditionRegister.Store;
using EditionRegister.UseCases.Works;

namespace EditionRegister.UseCases.Passes;

/// <summary>Takes back the last pass of a run, which was recorded by mistake.</summary>
public sealed class TakePassBack(RegisterStore store)
{
    /// <param name="work">The work.</param>
    /// <param name="run">The run's place among its runs.</param>
    /// <param name="pass">The pass's place in the run; null is the last.</param>
    /// <returns>Its place in the run.</returns>
    /// <exception cref="Domain.RefusedException">work-not-found, run-not-found, pass-not-found, pass-not-the-last.</exception>
    public int Run(long work, int run, int? pass = null) => store.Write("take-pass-back", writing =>
    {
        var found = writing.Read.WorkOrRefuse(work);
        var meant = found.Runs.FirstOrDefault(one => one.Ordinal == run) ?? throw WorkRefusals.NoSuchRun(found, run);
        var ordinal = pass ?? (meant.Passes is [.., var last] ? last.Ordinal : throw PassRefusals.NotFound(found, meant, 1));
        PassDeeds.TakeBack(found, meant, ordinal, writing.On(Root.Work(work)));

        return ordinal;
    });
}

using EditionRegister.Domain.Facts;
using EditionRegister.Domain.Integrity;
using EditionRegister.Store;

namespace EditionRegister.UseCases.Checking;

/// <summary>Takes the acceptance of a finding back, so that checks count it again.</summary>
public sealed class TakeAcceptanceBack(RegisterStore store)
{
    /// <summary>Answers the finding, with the acceptance it had.</summary>
    /// <param name="handle">What a check calls the finding.</param>
    /// <exception cref="Domain.RefusedException">finding-not-found, finding-of-the-file or finding-not-accepted.</exception>
    public Finding Run(string handle) => store.Write("take-acceptance-back", writing =>
    {
        var (work, finding) = WorkFindings.Named(writing.Read, handle);
        AcceptanceDeeds.TakeBack(finding, writing.On(Root.Work(work.Id)));

        return finding;
    });
}

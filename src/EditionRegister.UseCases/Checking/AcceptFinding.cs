using EditionRegister.Domain.Facts;
using EditionRegister.Domain.Integrity;
using EditionRegister.Store;

namespace EditionRegister.UseCases.Checking;

/// <summary>Accepts a finding with a reason: it stays on record and counts no more, and it returns when its facts change.</summary>
public sealed class AcceptFinding(RegisterStore store)
{
    /// <summary>Answers the finding that was accepted.</summary>
    /// <param name="handle">What a check calls the finding.</param>
    /// <param name="reason">Why it may stand.</param>
    /// <exception cref="Domain.RefusedException">finding-not-found, finding-of-the-file, finding-accepted-already or acceptance-reason-missing.</exception>
    public Finding Run(string handle, string reason) => store.Write("accept-finding", writing =>
    {
        var (work, finding) = WorkFindings.Named(writing.Read, handle);
        AcceptanceDeeds.Accept(finding, reason, Today.Of(store), writing.On(Root.Work(work.Id)));

        return finding;
    });
}

namespace EditionRegister.Domain.Integrity;

/// <summary>Why a finding cannot be accepted so.</summary>
public static class AcceptanceRefusals
{
    public static RefusedException NoReason() =>
        new("acceptance-reason-missing", "A finding is accepted for a reason. Nothing was changed. Give it with --reason, as in “the printer counted again in 2019 and found the same”.");

    public static RefusedException NotFound(string handle) =>
        new("finding-not-found", $"No finding is called {handle} now; its facts may have changed. Nothing was changed. `edreg check` shows what is found and how each finding is called.");

    public static RefusedException OfTheFile(string rule) =>
        new("finding-of-the-file", $"What {rule} finds is damage to the register itself, and no reason makes it sound, so it cannot be accepted. Nothing was changed. Run `edreg check`, and follow the remedy that stands beside it.");

    public static RefusedException AcceptedAlready(Finding finding, Acceptance acceptance) =>
        new("finding-accepted-already", $"{finding.Handle} was accepted on {acceptance.On}: {acceptance.Reason.TrimEnd('.')}. Nothing was changed. To give another reason take it back first with `edreg accept {finding.Handle} --take-back`.");

    public static RefusedException NotAccepted(Finding finding) =>
        new("finding-not-accepted", $"{finding.Handle} is not accepted, so there is nothing to take back. Nothing was changed. `edreg check` shows what is accepted.");
}

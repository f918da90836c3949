using EditionRegister.Domain.Dates;
using EditionRegister.Domain.Facts;

namespace EditionRegister.Domain.Integrity;

/// <summary>Accepting a finding with a reason, and taking that back.</summary>
public static class AcceptanceDeeds
{
    /// <summary>Keeps the finding's whole message as it stands: what it is held against from then on.</summary>
    /// <exception cref="RefusedException">acceptance-reason-missing or finding-accepted-already.</exception>
    public static void Accept(Finding finding, string reason, RecordedDate on, Deed deed)
    {
        if (string.IsNullOrWhiteSpace(reason))
        {
            throw AcceptanceRefusals.NoReason();
        }

        if (finding.Accepted is not null)
        {
            throw AcceptanceRefusals.AcceptedAlready(finding, finding.Accepted);
        }

        var id = deed.NewId("accepted_finding");
        deed.Set("accepted_finding", id,
            ("rule", finding.Rule), ("severity", finding.Severity.Word), ("subject_kind", finding.Subject.Kind), ("subject_id", finding.Subject.Id),
            ("finding", finding.Message), ("reason", reason.Trim()), ("withdrawn", "no"));
        deed.SetDate("accepted_finding", id, "accepted", on);
    }

    /// <exception cref="RefusedException">finding-not-accepted.</exception>
    public static void TakeBack(Finding finding, Deed deed) =>
        deed.Set("accepted_finding", (finding.Accepted ?? throw AcceptanceRefusals.NotAccepted(finding)).Id, ("withdrawn", "yes"));

    extension(Severity severity)
    {
        /// <summary>note, query or contradiction.</summary>
        public string Word => severity switch
        {
            Severity.Contradiction => "contradiction",
            Severity.Query => "query",
            _ => "note",
        };
    }
}

using EditionRegister.Domain.Integrity;

namespace EditionRegister.UseCases.Wording;

/// <summary>What is said when a finding was accepted, or that was taken back.</summary>
public static class FindingsSaid
{
    public static string Accepted(Finding finding) => $"Accepted: {finding.Rule}, {finding.Subject}. It returns when its facts change";

    public static string TakenBack(Finding finding) => $"No longer accepted: {finding.Rule}, {finding.Subject}.";
}

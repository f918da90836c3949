using EditionRegister.Domain.Integrity;
using EditionRegister.Domain.Works;

namespace EditionRegister.Domain.Tests.Integrity;

/// <summary>What one rule finds, as gravity and message, and that it says its name, its basis and a way out.</summary>
internal static class FindingsOf
{
    public static IReadOnlyList<string> Rule(string name, Work work)
    {
        var rule = Rules.All.Single(rule => rule.Name == name);
        var findings = rule.Check(work).ToList();

        Assert.All(findings, finding => Assert.Equal((name, rule.Basis), (finding.Rule, finding.Basis)));
        Assert.All(findings, finding => Assert.EndsWith(".", finding.Message));
        Assert.All(findings, finding => Assert.EndsWith(".", finding.Remedy));

        return [.. findings.Select(finding => $"{finding.Severity}: {finding.Message}")];
    }
}

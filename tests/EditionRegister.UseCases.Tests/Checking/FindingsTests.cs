using System.Text;
using EditionRegister.Domain.Integrity;
using EditionRegister.Store.Integrity;
using EditionRegister.Store.Sqlite;
using EditionRegister.Store;
using EditionRegister.Tests;
using EditionRegister.UseCases.Demo;

namespace EditionRegister.UseCases.Tests.Checking;

/// <summary>Every rule on every example: the clean demo, broken in one way, and everything the check then says.</summary>
public sealed class FindingsTests : IDisposable
{
    private readonly TempFolder _folder = new();

    public static TheoryData<string> Examples => [.. Directory.GetDirectories(Path.Combine(Approved.TestsFolder, "findings")).Select(path => Path.GetFileName(path)).Order(StringComparer.Ordinal)];

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void Every_rule_has_its_example()
    {
        var rules = Rules.All.Select(rule => rule.Name).Concat(FileRule.All.Select(rule => rule.Name));

        Assert.Equal(rules.Order(StringComparer.Ordinal), Examples.Select(row => row.Data));
    }

    [Theory]
    [MemberData(nameof(Examples))]
    public void What_is_broken_is_found_and_said(string rule)
    {
        RegisterFolder folder = new(_folder.In("demo"));
        var register = Register.Open(DemoCopy.Into(folder));
        Tampering.Break(folder, File.ReadAllText(Path.Combine(Approved.TestsFolder, "findings", rule, "break.sql")));

        var findings = register.CheckRegister.Run().ToList();

        Assert.Contains(findings, finding => finding.Rule == rule);
        Approved.Is(InWords(findings), "findings", rule, "says.txt");
    }

    private static string InWords(IEnumerable<Finding> findings)
    {
        StringBuilder text = new();

        foreach (var finding in findings)
        {
            text.Append(System.Globalization.CultureInfo.InvariantCulture, $"{finding.Severity} {finding.Rule}: {finding.Subject}\n  {finding.Message}\n  Basis: {finding.Basis}\n  {finding.Remedy}\n");
        }

        return text.ToString();
    }
}

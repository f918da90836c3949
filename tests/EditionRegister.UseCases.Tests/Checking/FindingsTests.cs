using System.Text;
using EditionRegister.Domain.Integrity;
using EditionRegister.Store;
using EditionRegister.Store.Integrity;
using EditionRegister.UseCases.Demo;
using Microsoft.Data.Sqlite;

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
        var register = new MakeDemo(_ => { }).Run(folder);
        Break(folder, File.ReadAllText(Path.Combine(Approved.TestsFolder, "findings", rule, "break.sql")));

        var findings = register.CheckRegister.Run().ToList();

        Assert.Contains(findings, finding => finding.Rule == rule);
        Approved.Is(InWords(findings), "findings", rule, "says.txt");
    }

    private static void Break(RegisterFolder folder, string sql)
    {
        using SqliteConnection connection = new($"Data Source={folder.Database};Pooling=False");
        connection.Open();
        using var triggers = connection.CreateCommand();
        triggers.CommandText = "PRAGMA foreign_keys=OFF; PRAGMA ignore_check_constraints=ON; SELECT name, sql FROM sqlite_master WHERE type = 'trigger' ORDER BY name";
        List<(string Name, string Sql)> guards = [];

        using (var reader = triggers.ExecuteReader())
        {
            while (reader.Read())
            {
                guards.Add((reader.GetString(0), reader.GetString(1)));
            }
        }

        // The guards would refuse all of this; someone with a database tool takes them away first and puts them back after.
        var restored = guards.Where(guard => !sql.Contains(guard.Name, StringComparison.Ordinal)).ToList();
        Run(string.Concat(restored.Select(guard => $"DROP TRIGGER {guard.Name};")));
        Run(sql);
        Run("PRAGMA writable_schema = OFF;");

        foreach (var guard in restored)
        {
            Run(guard.Sql);
        }

        void Run(string text)
        {
            using var command = connection.CreateCommand();
            command.CommandText = text;
            command.ExecuteNonQuery();
        }
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

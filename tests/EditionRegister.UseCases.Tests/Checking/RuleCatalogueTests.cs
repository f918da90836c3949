using EditionRegister.Domain.Integrity;
using EditionRegister.Store.Integrity;

namespace EditionRegister.UseCases.Tests.Checking;

/// <summary>Integrity/RULES.md is what the rules and their examples say, so that a reader need not run a check to know what is checked.</summary>
public sealed class RuleCatalogueTests
{
    private const string Head = """
        # The rules

        What `edreg check` holds the register to. Each rule comes with what it rests on, one way to break the demo, and what is said then.
        This page is made from the code and from `tests/findings/`: run the tests of UseCases with `EDREG_APPROVE=1` to write it anew.


        """;

    [Fact]
    public void The_catalogue_says_what_the_rules_and_their_examples_say()
    {
        var works = Rules.All.Select(rule => Entry(rule.Name, rule.Sentence, rule.Basis));
        var file = FileRule.All.Select(rule => Entry(rule.Name, rule.Sentence, rule.Basis));

        Approved.Is(
            $"{Head.ReplaceLineEndings("\n")}## Of every work\n\n{string.Concat(works)}## Of the file\n\n{string.Concat(file)}".TrimEnd('\n') + "\n",
            "..", "src", "EditionRegister.Domain", "Integrity", "RULES.md");
    }

    private static string Entry(string name, string sentence, string basis)
    {
        var finding = Finding.Of(name);

        return $"### {name}\n\n{sentence}\n\n- Basis: {basis}.\n- Broken: {Example(name, "break.sql")[0].TrimStart('-', ' ')}\n- Said ({finding.Severity}): {finding.Message}\n\n";
    }

    private static string[] Example(string rule, string file) => File.ReadAllLines(Path.Combine(Approved.TestsFolder, "findings", rule, file));

    /// <summary>The first thing a rule said of its own example, the gravest first.</summary>
    private sealed record Finding(string Severity, string Message)
    {
        public static Finding Of(string rule)
        {
            var lines = Example(rule, "says.txt");
            var own = Enumerable.Range(0, lines.Length)
                .Where(at => Enum.GetNames<Severity>().Any(severity => lines[at].StartsWith($"{severity} {rule}: ", StringComparison.Ordinal)))
                .Select(at => new Finding(
                    lines[at].Split(' ')[0].ToLowerInvariant(),
                    string.Join(' ', lines.Skip(at + 1).TakeWhile(line => !line.StartsWith("  Basis: ", StringComparison.Ordinal)).Select(line => line.Trim()))));

            return own.OrderBy(finding => finding.Severity != "contradiction").First();
        }
    }
}

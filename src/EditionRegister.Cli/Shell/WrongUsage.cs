using System.CommandLine;
using System.CommandLine.Parsing;
using EditionRegister.Domain.Text;

namespace EditionRegister.Cli;

/// <summary>Says what is wrong with a command line, what was probably meant, and how the command is used.</summary>
internal static class WrongUsage
{
    public static int Report(ParseResult line, TextWriter error) => Report(line, Sentences(line, line.CommandResult.Command), error);

    /// <summary>For what only turned out to be wrong when the line was obeyed.</summary>
    public static int Report(ParseResult line, WrongUsageException wrong, TextWriter error) => Report(line, [SafeText.Show(wrong.Message)], error);

    private static int Report(ParseResult line, IEnumerable<string> sentences, TextWriter error)
    {
        var command = line.CommandResult.Command;

        foreach (var sentence in sentences)
        {
            error.WriteLine(sentence);
        }

        error.WriteLine();
        error.WriteLine($"Usage: {HelpText.Usage(command)}");
        error.WriteLine($"More: {HelpText.Path(command)} --help");

        return ExitCode.Usage;
    }

    /// <summary>A first word in brackets: the parser takes it for a directive and, knowing none, passes over it.</summary>
    public static string? IgnoredWord(ParseResult line) =>
        line.Tokens is [{ Type: TokenType.Directive } first, ..] ? first.Value : null;

    private static IEnumerable<string> Sentences(ParseResult line, Command command)
    {
        // One wrong word makes the words after it wrong too; the first is the one to mend.
        if ((IgnoredWord(line) ?? (line.UnmatchedTokens is [var unknown, ..] ? unknown : null)) is { } wrong)
        {
            return [$"{HelpText.Path(command)} does not know “{SafeText.Show(wrong)}”.{Suggestion(wrong, command)}"];
        }

        return line.Errors.Select(problem => SafeText.Show(problem.Message)).Distinct(StringComparer.Ordinal);
    }

    private static string Suggestion(string wrong, Command command) =>
        NearestName.Of(wrong, Known(command)) is { } near ? $" Did you mean “{near}”?" : "";

    private static IEnumerable<string> Known(Command command) =>
        HelpText.Options(command).Concat(HelpText.SharedOptions(command)).Select(option => option.Name)
            .Concat(command.Subcommands.Where(sub => !sub.Hidden).Select(sub => sub.Name));
}

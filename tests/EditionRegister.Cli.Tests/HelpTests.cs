using System.CommandLine;
using System.CommandLine.Parsing;

namespace EditionRegister.Cli.Tests;

public sealed class HelpTests : IDisposable
{
    private readonly CliRun _cli = new();

    /// <summary>The words of every command, those inside other commands too.</summary>
    public static TheoryData<string> EveryCommand =>
        [.. Commands.All.SelectMany(create => Below(create(Nobody())))];

    public void Dispose() => _cli.Dispose();

    [Fact]
    public void Finds_every_command_by_its_first_word()
    {
        var words = Commands.All.Select(create => create(Nobody()).Name).ToList();

        var found = words.Select(word => Commands.MeantBy([word, "--help"]) is [var create] ? create(Nobody()).Name : "none");

        Assert.Equal(words, found);
    }

    [Theory]
    [MemberData(nameof(EveryCommand))]
    public void Shows_an_example_that_the_program_understands(string command)
    {
        _cli.Run([.. command.Split(' '), "--help"]);

        var lines = _cli.Output.ToString().Split('\n');
        var example = lines[Array.IndexOf(lines, "Example:") + 1];
        Assert.StartsWith($"  edreg {command}", example, StringComparison.Ordinal);
        Assert.Empty(ErrorsIn(example));
    }

    [Theory]
    [MemberData(nameof(EveryCommand))]
    public void Says_in_a_sentence_what_a_command_does(string command)
    {
        _cli.Run([.. command.Split(' '), "--help"]);

        Assert.EndsWith(".", _cli.Output.ToString().Split('\n')[0], StringComparison.Ordinal);
    }

    [Fact]
    public void Shows_what_a_command_takes()
    {
        _cli.Commands =
        [
            _ => new CommandWithExample("number", "Gives the next open number to a kept sheet.", "edreg number 7KQ4-M2X3 --notation roman")
            {
                new Argument<string>("sheet") { HelpName = "CODE", Description = "The sheet's register code." },
                new Argument<string[]>("more") { HelpName = "CODE", Description = "More of them.", Arity = ArgumentArity.ZeroOrMore },
                new Option<string>("--notation") { HelpName = "NOTATION", Description = "Arabic, roman or letters.", Required = true },
                new Option<bool>("--all") { Description = "Every kept sheet." },
            },
        ];

        _cli.Run("number", "--help");

        Assert.Equal(
            """
            Gives the next open number to a kept sheet.

            Usage: edreg number CODE [CODE...] [options]

            Takes:
              CODE       The sheet's register code.
              [CODE...]  More of them.

            Options:
              --notation NOTATION  Arabic, roman or letters. Needed.
              --all                Every kept sheet.

            Options of every command:
              -h, -?, --help  Shows what a command does, with an example.
              --register DIR  The register's folder. Else EDREG_REGISTER, else the current folder or one above it.
              --json          Prints the result for machines: one JSON document, format edreg/1.
              --by PERSON     The number of the person who does this. Else the one register.toml names.

            Example:
              edreg number 7KQ4-M2X3 --notation roman

            """.ReplaceLineEndings("\n"),
            _cli.Output.ToString());
    }

    private static IEnumerable<ParseError> ErrorsIn(string example)
    {
        string[] args = [.. CommandLineParser.SplitCommandLine(example).Skip(1)];

        return CommandLine.Parse(args, Nobody(), Commands.All).Errors;
    }

    private static CommandContext Nobody() => new(AppServices.OfThisProcess(), TextWriter.Null, TextWriter.Null);

    private static IEnumerable<string> Below(Command command) =>
        [command.Name, .. command.Subcommands.SelectMany(Below).Select(sub => $"{command.Name} {sub}")];
}

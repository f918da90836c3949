using System.CommandLine;
using EditionRegister.Cli;

namespace EditionRegister.UseCases.Tests.Refusals;

/// <summary>The commands and options the program really has.</summary>
internal static class ProgramCommands
{
    private static readonly List<(string Name, Command Command)> Found = [.. Commands.All.Select(create => create(Context())).SelectMany(command => Below("", command))];

    public static IReadOnlySet<string> Options { get; } =
        Found.SelectMany(one => one.Command.Options).Select(option => option.Name).Concat(["--register", "--json", "--by", "--help"]).ToHashSet(StringComparer.Ordinal);

    /// <summary>Whether a command of these words is there; a word after a command that takes none below it is its argument.</summary>
    public static bool Knows(string words) =>
        Found.Any(one => one.Name == words) || (words.Split(' ') is [var first, _] && Found.Any(one => one.Name == first && one.Command.Subcommands.Count == 0));

    private static IEnumerable<(string Name, Command Command)> Below(string before, Command command)
    {
        var name = $"{before} {command.Name}".Trim();

        return command.Subcommands.SelectMany(inner => Below(name, inner)).Prepend((name, command));
    }

    private static CommandContext Context() => new(
        new AppServices { Time = TimeProvider.System, Environment = _ => null, CurrentDirectory = Path.GetTempPath(), IsOutputRedirected = true }, TextWriter.Null, TextWriter.Null);
}

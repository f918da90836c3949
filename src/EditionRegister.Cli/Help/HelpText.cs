using System.CommandLine;
using System.CommandLine.Help;

namespace EditionRegister.Cli;

/// <summary>What --help prints: what the command does, how it is used, what it takes, an example. Never wrapped.</summary>
internal static class HelpText
{
    public const string Program = "edreg";

    public static void Write(Command command, TextWriter output)
    {
        output.WriteLine(command.Description);
        output.WriteLine();
        output.WriteLine($"Usage: {Usage(command)}");

        Section(output, "Commands", command.Subcommands.Where(sub => !sub.Hidden).Select(sub => (Invocation(sub), sub.Description)));
        Section(output, "Takes", command.Arguments.Where(argument => !argument.Hidden).Select(argument => (Word(argument), argument.Description)));
        Section(output, "Options", Options(command).Select(Row));
        Section(output, "Options of every command", SharedOptions(command).Select(Row));

        output.WriteLine();
        output.WriteLine("Example:");
        output.WriteLine($"  {(command as CommandWithExample)?.Example ?? $"{Program} --help"}");
    }

    public static string Usage(Command command)
    {
        var rest = command.Subcommands.Count > 0 ? " COMMAND [options]" : " [options]";

        return Path(command) + string.Concat(command.Arguments.Where(argument => !argument.Hidden).Select(argument => $" {Word(argument)}")) + rest;
    }

    /// <summary>The words that lead to a command: "edreg edition declare".</summary>
    public static string Path(Command command) =>
        command.Parents.OfType<Command>().FirstOrDefault() is { } parent ? $"{Path(parent)} {command.Name}" : Program;

    /// <summary>The same without the program's name: what the machine form calls a command.</summary>
    public static string Words(Command command) => Path(command)[(Program.Length + 1)..];

    /// <summary>The command's own options.</summary>
    public static IEnumerable<Option> Options(Command command) =>
        command.Options.Where(option => option is { Hidden: false, Recursive: false } and not VersionOption);

    /// <summary>The options it takes because every command does; the root alone takes --version.</summary>
    public static IEnumerable<Option> SharedOptions(Command command) =>
        command.Options.Where(option => option is { Hidden: false } and VersionOption).Concat(Recursive(command));

    private static IEnumerable<Option> Recursive(Command command) =>
        command.Parents.OfType<Command>().SelectMany(Recursive).Concat(command.Options.Where(option => option is { Hidden: false, Recursive: true }));

    private static string Invocation(Command command) =>
        string.Join(' ', [command.Name, .. command.Arguments.Where(argument => !argument.Hidden).Select(Word)]);

    private static string Word(Argument argument)
    {
        var word = argument.HelpName ?? argument.Name.ToUpperInvariant();
        var many = argument.Arity.MaximumNumberOfValues > 1 ? "..." : "";

        return argument.Arity.MinimumNumberOfValues == 0 ? $"[{word}{many}]" : $"{word}{many}";
    }

    private static (string Left, string? Right) Row(Option option)
    {
        var names = string.Join(", ", option.Aliases.Append(option.Name).Distinct(StringComparer.Ordinal).OrderBy(name => name.Length));
        var takesValue = option.Arity.MaximumNumberOfValues > 0 && option.ValueType != typeof(bool) && option is not HelpOption and not VersionOption;
        var value = takesValue ? $" {option.HelpName ?? option.Name.TrimStart('-').ToUpperInvariant()}" : "";

        return (names + value, option.Required ? $"{option.Description} Needed." : option.Description);
    }

    private static void Section(TextWriter output, string head, IEnumerable<(string Left, string? Right)> rows)
    {
        (string Left, string? Right)[] all = [.. rows];

        if (all.Length == 0)
        {
            return;
        }

        var width = all.Max(row => row.Left.Length);
        output.WriteLine();
        output.WriteLine($"{head}:");

        foreach (var (left, right) in all)
        {
            output.WriteLine($"  {left.PadRight(width)}  {right}".TrimEnd());
        }
    }
}

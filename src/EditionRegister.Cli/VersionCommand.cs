using System.CommandLine;
using System.Reflection;

namespace EditionRegister.Cli;

/// <summary><c>edreg version</c>: says which program this is.</summary>
internal static class VersionCommand
{
    public static string ProgramVersion { get; } =
        typeof(VersionCommand).Assembly.GetCustomAttribute<AssemblyInformationalVersionAttribute>()!.InformationalVersion;

    public static Command Create(CommandContext context)
    {
        CommandWithExample command = new("version", "Says which version of the program this is.", example: "edreg version --json");

        command.SetAction(_ => Show(context.Printer()));

        return command;
    }

    public static int Show(Printer printer)
    {
        printer.Show(
            text: () => printer.Line($"edreg {ProgramVersion}"),
            json: json => json.WriteString("version", ProgramVersion));

        return ExitCode.Done;
    }
}

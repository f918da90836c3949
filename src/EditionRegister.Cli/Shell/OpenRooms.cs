using System.CommandLine;
using EditionRegister.Domain;
using EditionRegister.Tui;

namespace EditionRegister.Cli;

/// <summary><c>edreg</c> alone: the text-mode UI, or where there is no terminal for it, a sentence that says so and the commands.</summary>
internal static class OpenRooms
{
    private const string NoTerminal = "There is no terminal here to show the register on. Every job is also a command:";

    public static int Run(CommandContext context, ParseResult line, Command root)
    {
        if (context.Services.IsInputRedirected || context.Services.IsOutputRedirected)
        {
            context.Error.WriteLine(NoTerminal);
            HelpText.Write(root, context.Output);

            return ExitCode.Usage;
        }

        TextUi.Run(Folder(context, line), new TextUiServices(
            context.Surroundings(),
            context.Services.Environment,
            context.Services.CurrentDirectory,
            context.By(line),
            (failure, folder) => BugReport.OwnUp(failure, folder, context.Services.Time)));

        return ExitCode.Done;
    }

    /// <summary>The register's folder; null where none was named and none found, and so one is to be made.</summary>
    /// <exception cref="RefusedException">register-not-found: one was named, and is not there.</exception>
    private static string? Folder(CommandContext context, ParseResult line)
    {
        try
        {
            return context.RegisterFolder(line);
        }
        catch (RefusedException) when (line.GetValue(context.Global.Register) is null && string.IsNullOrEmpty(context.Services.Environment(RegisterFinder.Variable)))
        {
            return null;
        }
    }
}

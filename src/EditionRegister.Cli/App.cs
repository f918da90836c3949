using System.CommandLine;
using System.CommandLine.Invocation;
using System.Globalization;
using EditionRegister.Domain;

namespace EditionRegister.Cli;

/// <summary>Runs one command line: the one place that turns a failure into words and an exit code.</summary>
internal static class App
{
    public static int Run(IReadOnlyList<string> args, TextWriter output, TextWriter error, AppServices services) =>
        Run(args, output, error, services, Commands.MeantBy(args));

    /// <summary>Takes the commands too, so that a test can bring one that fails.</summary>
    internal static int Run(
        IReadOnlyList<string> args,
        TextWriter output,
        TextWriter error,
        AppServices services,
        IReadOnlyList<Func<CommandContext, Command>> commands)
    {
        // The parser speaks the user's language in a few of its messages; ours are English throughout.
        var language = CultureInfo.CurrentUICulture;
        CultureInfo.CurrentUICulture = CultureInfo.InvariantCulture;
        CommandContext context = new(services, output, error);

        try
        {
            return Ended(context, () => Obey(args, context, commands));
        }
        finally
        {
            CultureInfo.CurrentUICulture = language;
        }
    }

    private static int Obey(IReadOnlyList<string> args, CommandContext context, IReadOnlyList<Func<CommandContext, Command>> commands)
    {
        var line = CommandLine.Parse(args, context, commands);
        context.IsJson = line.GetValue(context.Global.Json);

        if (line.Action is null or ParseErrorAction || WrongUsage.IgnoredWord(line) is not null)
        {
            return WrongUsage.Report(line, context.Error);
        }

        var code = Invoke(line, context);

        if (code == ExitCode.Done)
        {
            Readings.Print(line, context);
        }

        context.Output.Flush();

        return code;
    }

    private static int Invoke(ParseResult line, CommandContext context)
    {
        try
        {
            return line.Invoke(new InvocationConfiguration
            {
                EnableDefaultExceptionHandler = false,
                ProcessTerminationTimeout = null,
                Output = context.Output,
                Error = context.Error,
            });
        }
        catch (WrongUsageException wrong)
        {
            return WrongUsage.Report(line, wrong, context.Error);
        }
    }

    private static int Ended(CommandContext context, Func<int> obey)
    {
        try
        {
            return obey();
        }
        catch (RefusedException refusal)
        {
            return RefusalReport.Report(refusal, context);
        }
        catch (OperationCanceledException)
        {
            return ExitCode.Stopped;
        }
        catch (IOException exception) when (WriteFailure.IsBrokenPipe(exception))
        {
            // The reader has seen enough, as `head` has after ten lines.
            return ExitCode.Done;
        }
        catch (IOException exception) when (WriteFailure.IsNoSpace(exception))
        {
            context.Error.WriteLine(WriteFailure.NoSpace);
            return ExitCode.Refused;
        }
        catch (Exception exception)
        {
            return BugReport.Report(exception, context);
        }
    }
}

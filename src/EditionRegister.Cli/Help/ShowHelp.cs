using System.CommandLine;
using System.CommandLine.Invocation;

namespace EditionRegister.Cli;

/// <summary>Prints the help of the command that was named, whatever else is wrong with the line.</summary>
internal sealed class ShowHelp(CommandContext context) : SynchronousCommandLineAction
{
    public override bool ClearsParseErrors => true;

    public override int Invoke(ParseResult parseResult)
    {
        HelpText.Write(parseResult.CommandResult.Command, context.Output);

        return ExitCode.Done;
    }
}

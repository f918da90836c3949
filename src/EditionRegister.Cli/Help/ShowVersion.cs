using System.CommandLine;
using System.CommandLine.Invocation;

namespace EditionRegister.Cli;

/// <summary>Prints what the command <c>version</c> prints.</summary>
internal sealed class ShowVersion(CommandContext context) : SynchronousCommandLineAction
{
    public override int Invoke(ParseResult parseResult) => VersionCommand.Show(context.Printer());
}

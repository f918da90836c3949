using System.CommandLine;

namespace EditionRegister.Cli;

/// <summary><c>edreg work</c>: everything about works.</summary>
internal static class WorkCommand
{
    public static Command Create(CommandContext context) => new CommandWithExample("work", "Records works, and shows them.", "edreg work list")
    {
        WorkAddCommand.Create(context),
        WorkListCommand.Create(context),
        WorkShowCommand.Create(context),
        WorkEditCommand.Create(context),
        WorkJoinCommand.Create(context),
    };
}

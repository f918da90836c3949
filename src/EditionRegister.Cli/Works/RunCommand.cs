using System.CommandLine;

namespace EditionRegister.Cli;

/// <summary><c>edreg run</c>: everything about print runs.</summary>
internal static class RunCommand
{
    public static Command Create(CommandContext context) =>
        new CommandWithExample("run", "Records print runs, and puts them right.", "edreg run add 3 --started 24 --spoiled 3 --unused 2") 
        {
            RunAddCommand.Create(context), RunEditCommand.Create(context), RunPileCommand.Create(context),
        };
}

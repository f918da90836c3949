using System.CommandLine;

namespace EditionRegister.Cli;

/// <summary><c>edreg set part</c>: which works a set is made of.</summary>
internal static class SetPartCommand
{
    public static Command Create(CommandContext context) => new CommandWithExample("part", "Says which works a set is made of, in their order.", "edreg set part add 9 5 6 7")
    {
        SetPartAddCommand.Create(context),
        SetPartRemoveCommand.Create(context),
    };
}

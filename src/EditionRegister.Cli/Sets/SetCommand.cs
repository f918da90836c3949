using System.CommandLine;

namespace EditionRegister.Cli;

/// <summary><c>edreg set</c>: portfolios, suites, books and print exchanges: works of parts, whose own sheets are the copies.</summary>
internal static class SetCommand
{
    public static Command Create(CommandContext context) => new CommandWithExample("set", "Portfolios, suites, books and print exchanges: what they are made of, and which sheets lie in which copy.", "edreg set list")
    {
        SetListCommand.Create(context),
        SetShowCommand.Create(context),
        SetMakeCommand.Create(context),
        SetEditCommand.Create(context),
        SetPartCommand.Create(context),
        SetGatherCommand.Create(context),
        SetTakeOutCommand.Create(context),
    };
}

using System.CommandLine;

namespace EditionRegister.Cli;

/// <summary><c>edreg condition</c>: how sheets are, as someone saw them.</summary>
internal static class ConditionCommand
{
    public static Command Create(CommandContext context) => new CommandWithExample("condition", "Records how sheets are when they rest, go out and come back, and compares.", "edreg condition show 7KQ4-M2X3")
    {
        ConditionAddCommand.Create(context),
        ConditionListCommand.Create(context),
        ConditionShowCommand.Create(context),
        ConditionPrintCommand.Create(context),
        ConditionTermsCommand.Create(context),
        ConditionTermCommand.Create(context),
    };
}

using System.CommandLine;

namespace EditionRegister.Cli;

/// <summary><c>edreg kind</c>: kinds of numbering of the register's own.</summary>
internal static class KindCommand
{
    public static Command Create(CommandContext context) => new CommandWithExample("kind", "Makes kinds of numbering of the register's own, beside those every register knows.", "edreg kind list")
    {
        KindListCommand.Create(context),
        KindAddCommand.Create(context),
        KindEditCommand.Create(context),
    };
}

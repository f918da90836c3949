using System.CommandLine;

namespace EditionRegister.Cli;

/// <summary><c>edreg pass</c>: everything about trips through the press or under the hand.</summary>
internal static class PassCommand
{
    public static Command Create(CommandContext context) => new CommandWithExample("pass", "Records the passes of a print run: what was printed from what, in which colours, and what came of the sheets.", "edreg pass add 3 --matrix key=II --colour red --out 13 --spoiled slur=1")
    {
        PassAddCommand.Create(context),
        PassAgainCommand.Create(context),
        PassEditCommand.Create(context),
        PassListCommand.Create(context),
        PassTakeBackCommand.Create(context),
    };
}

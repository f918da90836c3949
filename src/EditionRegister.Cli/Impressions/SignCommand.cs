using System.CommandLine;

namespace EditionRegister.Cli;

/// <summary><c>edreg sign</c>: a signing session over an edition, sheet by sheet.</summary>
internal static class SignCommand
{
    public static Command Create(CommandContext context) => new CommandWithExample("sign", "Takes you through the signing of an edition: spells the next sheet, and records that it stands there so.", "edreg sign next 3")
    {
        SignNextCommand.Create(context),
        SignDoneCommand.Create(context),
    };
}

using System.CommandLine;

namespace EditionRegister.Cli;

/// <summary>Every command there is, in the order of the help.</summary>
internal static class Commands
{
    public static IReadOnlyList<Func<CommandContext, Command>> All { get; } =
    [
        DemoCommand.Create,
        UndoCommand.Create,
        CertificateCommand.Create,
        LabelsCommand.Create,
        PencilCommand.Create,
        InventoryCommand.Create,
        VersionCommand.Create,
    ];
}

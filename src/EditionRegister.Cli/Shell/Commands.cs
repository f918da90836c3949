using System.CommandLine;

namespace EditionRegister.Cli;

/// <summary>Every command there is, in the order of the help.</summary>
internal static class Commands
{
    public static IReadOnlyList<Func<CommandContext, Command>> All { get; } =
    [
        NewCommand.Create,
        DemoCommand.Create,
        ReadCommand.Create,
        UndoCommand.Create,
        ListCommand.Create,
        ShowCommand.Create,
        MapCommand.Create,
        WorkCommand.Create,
        PersonCommand.Create,
        PlaceCommand.Create,
        MatrixCommand.Create,
        RunCommand.Create,
        SortCommand.Create,
        DeclareCommand.Create,
        MendCommand.Create,
        NumberCommand.Create,
        FateCommand.Create,
        InscribeCommand.Create,
        PriceCommand.Create,
        CloseCommand.Create,
        PutAwayCommand.Create,
        ConsignCommand.Create,
        ReturnCommand.Create,
        SellCommand.Create,
        CertificateCommand.Create,
        LabelsCommand.Create,
        PencilCommand.Create,
        InventoryCommand.Create,
        CheckCommand.Create,
        LogCommand.Create,
        VersionCommand.Create,
    ];
}

using System.CommandLine;

namespace EditionRegister.Cli;

/// <summary>Every command there is, in the order of the help.</summary>
internal static class Commands
{
    public static IReadOnlyList<Func<CommandContext, Command>> All { get; } =
    [
        NewCommand.Create,
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
        ReadCommand.Create,
        CheckCommand.Create,
        LogCommand.Create,
        VersionCommand.Create,
    ];
}

using System.CommandLine;

namespace EditionRegister.Cli;

/// <summary>Every command there is, by its first word, in the order of the help.</summary>
internal static class Commands
{
    private static readonly OrderedDictionary<string, Func<CommandContext, Command>> ByWord = new(StringComparer.Ordinal)
    {
        ["new"] = NewCommand.Create,
        ["demo"] = DemoCommand.Create,
        ["settings"] = SettingsCommand.Create,
        ["read"] = ReadCommand.Create,
        ["undo"] = UndoCommand.Create,
        ["list"] = ListCommand.Create,
        ["show"] = ShowCommand.Create,
        ["map"] = MapCommand.Create,
        ["work"] = WorkCommand.Create,
        ["person"] = PersonCommand.Create,
        ["place"] = PlaceCommand.Create,
        ["matrix"] = MatrixCommand.Create,
        ["run"] = RunCommand.Create,
        ["sort"] = SortCommand.Create,
        ["declare"] = DeclareCommand.Create,
        ["mend"] = MendCommand.Create,
        ["number"] = NumberCommand.Create,
        ["fate"] = FateCommand.Create,
        ["inscribe"] = InscribeCommand.Create,
        ["price"] = PriceCommand.Create,
        ["whole"] = WholeCommand.Create,
        ["close"] = CloseCommand.Create,
        ["put-away"] = PutAwayCommand.Create,
        ["consign"] = ConsignCommand.Create,
        ["return"] = ReturnCommand.Create,
        ["sell"] = SellCommand.Create,
        ["take-back"] = TakeBackCommand.Create,
        ["certificate"] = CertificateCommand.Create,
        ["labels"] = LabelsCommand.Create,
        ["pencil"] = PencilCommand.Create,
        ["picture"] = PictureCommand.Create,
        ["shows"] = ShowsCommand.Create,
        ["inventory"] = InventoryCommand.Create,
        ["schedule"] = ScheduleCommand.Create,
        ["check"] = CheckCommand.Create,
        ["accept"] = AcceptCommand.Create,
        ["log"] = LogCommand.Create,
        ["version"] = VersionCommand.Create,
    };

    public static IReadOnlyList<Func<CommandContext, Command>> All => ByWord.Values;

    /// <summary>
    /// The commands a line may mean: the one it begins with, or all. To make all of them takes longer than most of what they do.
    /// </summary>
    public static IReadOnlyList<Func<CommandContext, Command>> MeantBy(IReadOnlyList<string> args) =>
        args is [var first, ..] && ByWord.TryGetValue(first, out var create) ? [create] : All;
}

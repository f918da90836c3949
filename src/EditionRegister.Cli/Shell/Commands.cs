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
        ["read-again"] = ReadAgainCommand.Create,
        ["known"] = KnownCommand.Create,
        ["hold"] = HoldCommand.Create,
        ["undo"] = UndoCommand.Create,
        ["list"] = ListCommand.Create,
        ["show"] = ShowCommand.Create,
        ["map"] = MapCommand.Create,
        ["work"] = WorkCommand.Create,
        ["person"] = PersonCommand.Create,
        ["place"] = PlaceCommand.Create,
        ["matrix"] = MatrixCommand.Create,
        ["run"] = RunCommand.Create,
        ["pass"] = PassCommand.Create,
        ["rack"] = RackCommand.Create,
        ["plan"] = PlanCommand.Create,
        ["grade"] = GradeCommand.Create,
        ["propose"] = ProposeCommand.Create,
        ["sort"] = SortCommand.Create,
        ["work-over"] = WorkOverCommand.Create,
        ["declare"] = DeclareCommand.Create,
        ["mend"] = MendCommand.Create,
        ["number"] = NumberCommand.Create,
        ["fate"] = FateCommand.Create,
        ["vary"] = VaryCommand.Create,
        ["ghost"] = GhostCommand.Create,
        ["dedicate"] = DedicateCommand.Create,
        ["replace"] = ReplaceCommand.Create,
        ["sign"] = SignCommand.Create,
        ["inscribe"] = InscribeCommand.Create,
        ["alter"] = AlterCommand.Create,
        ["price"] = PriceCommand.Create,
        ["whole"] = WholeCommand.Create,
        ["short"] = ShortCommand.Create,
        ["divide"] = DivideCommand.Create,
        ["close"] = CloseCommand.Create,
        ["set"] = SetCommand.Create,
        ["put-away"] = PutAwayCommand.Create,
        ["consign"] = ConsignCommand.Create,
        ["pass-on"] = PassOnCommand.Create,
        ["lend"] = LendCommand.Create,
        ["exhibit"] = ExhibitCommand.Create,
        ["away"] = AwayCommand.Create,
        ["return"] = ReturnCommand.Create,
        ["reserve"] = ReserveCommand.Create,
        ["lift"] = LiftCommand.Create,
        ["sell"] = SellCommand.Create,
        ["give"] = PassingCommands.Give,
        ["exchange"] = PassingCommands.Exchange,
        ["bequeath"] = PassingCommands.Bequeath,
        ["await"] = AwaitCommand.Create,
        ["hand-over"] = HandOverCommand.Create,
        ["take-back-from-buyer"] = TakeBackFromBuyerCommand.Create,
        ["mishap"] = MishapCommand.Create,
        ["find"] = FindCommand.Create,
        ["due"] = DueCommand.Create,
        ["amend"] = AmendCommand.Create,
        ["take-back"] = TakeBackCommand.Create,
        ["kind"] = KindCommand.Create,
        ["fault"] = FaultCommand.Create,
        ["technique"] = TechniqueCommand.Create,
        ["stock"] = StockCommand.Create,
        ["condition"] = ConditionCommand.Create,
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

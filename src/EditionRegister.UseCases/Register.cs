using EditionRegister.Domain;
using EditionRegister.Store;
using EditionRegister.UseCases.Checking;
using EditionRegister.UseCases.Conditions;
using EditionRegister.UseCases.Documents;
using EditionRegister.UseCases.Editions;
using EditionRegister.UseCases.Impressions;
using EditionRegister.UseCases.Inventory;
using EditionRegister.UseCases.Looking;
using EditionRegister.UseCases.Moves;
using EditionRegister.UseCases.Passes;
using EditionRegister.UseCases.People;
using EditionRegister.UseCases.Planning;
using EditionRegister.UseCases.Pictures;
using EditionRegister.UseCases.ReadingIn;
using EditionRegister.UseCases.Registers;
using EditionRegister.UseCases.Sets;
using EditionRegister.UseCases.Shows;
using EditionRegister.UseCases.LookingBack;
using EditionRegister.UseCases.Words;
using EditionRegister.UseCases.Stock;
using EditionRegister.UseCases.Works;

namespace EditionRegister.UseCases;

/// <summary>An open register: its settings, and everything a person can do with it.</summary>
public sealed class Register
{
    private readonly Func<long?> _by;
    private volatile RegisterSettings? _settings;

    private Register(RegisterFolder folder, Surroundings surroundings, long? by)
    {
        _by = () => by ?? Settings.By;
        Store = new RegisterStore(folder, surroundings, _by);
    }

    public RegisterFolder Folder => Store.Folder;

    /// <summary>Read when first asked for: a check needs none.</summary>
    /// <exception cref="RefusedException">The settings cannot be read; file, line and column are named.</exception>
    public RegisterSettings Settings => _settings ??= RegisterFile.Read(Folder);

    public TimeProvider Time => Store.Time;

    /// <summary>What it changes counts from then on.</summary>
    public ChangeSettings ChangeSettings => new(Store, () => _settings = null);

    public RecordPerson RecordPerson => new(Store);

    public EditPerson EditPerson => new(Store);

    public RecordPlace RecordPlace => new(Store);

    public EditPlace EditPlace => new(Store);

    public WritePlaceList WritePlaceList => new(Store, Settings);

    public RecordWork RecordWork => new(Store);

    public EditWork EditWork => new(Store);

    public ListBench ListBench => new(Store);

    public JoinWork JoinWork => new(Store);

    public RecordMatrix RecordMatrix => new(Store);

    public EditMatrix EditMatrix => new(Store);

    public ReachMatrixState ReachMatrixState => new(Store);

    public StateMatrixFate StateMatrixFate => new(Store);

    public RecordPrintRun RecordPrintRun => new(Store);

    public EditPrintRun EditPrintRun => new(Store);

    public LayPile LayPile => new(Store);

    public ListRack ListRack => new(Store);

    public RecordPass RecordPass => new(Store);

    public EditPass EditPass => new(Store);

    public TakePassBack TakePassBack => new(Store);

    public PlanSheets PlanSheets => new(Store);

    public SortPulls SortPulls => new(Store);

    public GradeSheets GradeSheets => new(Store);

    public ProposeKept ProposeKept => new(Store);

    public SignSheets SignSheets => new(Store);

    public AlterSheet AlterSheet => new(Store);

    public WorkOver WorkOver => new(Store);

    public MakeSet MakeSet => new(Store);

    public ChangeSetParts ChangeSetParts => new(Store);

    public GatherSet GatherSet => new(Store);

    public EditSet EditSet => new(Store);

    public TakeOutOfSet TakeOutOfSet => new(Store);

    public RehearseDeclaration RehearseDeclaration => new(Store);

    public DeclareEdition DeclareEdition => new(Store);

    public MendSize MendSize => new(Store);

    public EndShort EndShort => new(Store);

    public DivideEdition DivideEdition => new(Store);

    public VarySheets VarySheets => new(Store);

    public LinkGhost LinkGhost => new(Store);

    public DedicateSheets DedicateSheets => new(Store);

    public ReplaceSheet ReplaceSheet => new(Store);

    public AddKind AddKind => new(Store);

    public EditKind EditKind => new(Store);

    public AddFault AddFault => new(Store);

    public GiveNumbers GiveNumbers => new(Store);

    public StateNumberFate StateNumberFate => new(Store);

    public MakeEditionWhole MakeEditionWhole => new(Store);

    public CloseEdition CloseEdition => new(Store);

    public InscribeImpressions InscribeImpressions => new(Store);

    public PutInscriptionBack PutInscriptionBack => new(Store);

    public PriceImpressions PriceImpressions => new(Store);

    public PutAway PutAway => new(Store);

    public Consign Consign => new(Store);

    public ReturnImpressions ReturnImpressions => new(Store);

    public SellImpressions SellImpressions => new(Store);

    public TakeLinkBack TakeLinkBack => new(Store);

    public SendAway SendAway => new(Store);

    public HandOver HandOver => new(Store);

    public RecordMishap RecordMishap => new(Store);

    public FindAgain FindAgain => new(Store);

    public PassSheets PassSheets => new(Store);

    public TakeBackFromBuyer TakeBackFromBuyer => new(Store);

    public ReserveSheets ReserveSheets => new(Store);

    public LiftReservation LiftReservation => new(Store);

    public AmendChain AmendChain => new(Store);

    public ListDue ListDue => new(Store);

    public KnownNumbers KnownNumbers => new(Store);

    public HoldSheet HoldSheet => new(Store);
    public TakeStock TakeStock => new(Store, _by());

    public SettleStock SettleStock => new(Store);

    public DeliverSheets DeliverSheets => new(Store, _by());

    public ReceiveSheets ReceiveSheets => new(Store, _by());

    public ReportCondition ReportCondition => new(Store, _by());

    public RecordConditionTerm RecordConditionTerm => new(Store);

    public WriteConditionSheet WriteConditionSheet => new(Store, Settings);

    public MakeShow MakeShow => new(Store);

    public EditShow EditShow => new(Store);

    public AddToShow AddToShow => new(Store);

    public RemoveFromShow RemoveFromShow => new(Store);

    public CheckRegister CheckRegister => new(Store);

    public AcceptFinding AcceptFinding => new(Store);

    public TakeAcceptanceBack TakeAcceptanceBack => new(Store);

    public IssueCertificates IssueCertificates => new(Store, Settings);

    public PreviewCertificates PreviewCertificates => new(Store, Settings);

    public PreviewStandingCertificates PreviewStandingCertificates => new(Store);

    public WriteCertificates WriteCertificates => new(Store);

    public ListLabelSheets ListLabelSheets => new(Store);

    public PlanLabels PlanLabels => new(Store, Settings);

    public WriteLabels WriteLabels => new(Store, Settings);

    public SpellPencil SpellPencil => new(Store);

    public PreviewInventory PreviewInventory => new(Store);

    public ExportInventory ExportInventory => new(Store);

    public AddPictures AddPictures => new(Store);

    public ListPictures ListPictures => new(Store);

    public TakePictureOff TakePictureOff => new(Store);

    public WritePublicPictures WritePublicPictures => new(Store);

    public ListSchedule ListSchedule => new(Store);

    public LookBack LookBack => new(Store);

    public UndoBatch UndoBatch => new(Store);

    public ReadIn ReadIn => new(Store, Settings);

    public LookAround LookAround => new(Store);

    public ListImpressions ListImpressions => new(Store);

    /// <summary>A chest that is still shut; keep it once it is open.</summary>
    public PlanChest PlanChest => new(Store, _by());

    internal RegisterStore Store { get; }

    /// <summary>The register in a folder. Whether it can be read, and written, shows when that is done.</summary>
    public static Register Open(RegisterFolder folder, Surroundings? surroundings = null, long? by = null) =>
        new(folder, surroundings ?? Surroundings.Usual, by);
}

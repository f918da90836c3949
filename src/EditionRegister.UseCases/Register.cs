using EditionRegister.Domain;
using EditionRegister.Store;
using EditionRegister.UseCases.Checking;
using EditionRegister.UseCases.Documents;
using EditionRegister.UseCases.Editions;
using EditionRegister.UseCases.Impressions;
using EditionRegister.UseCases.Inventory;
using EditionRegister.UseCases.Looking;
using EditionRegister.UseCases.Moves;
using EditionRegister.UseCases.People;
using EditionRegister.UseCases.Pictures;
using EditionRegister.UseCases.ReadingIn;
using EditionRegister.UseCases.Registers;
using EditionRegister.UseCases.Shows;
using EditionRegister.UseCases.LookingBack;
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

    public RecordWork RecordWork => new(Store);

    public EditWork EditWork => new(Store);

    public ListBench ListBench => new(Store);

    public JoinWork JoinWork => new(Store);

    public RecordMatrix RecordMatrix => new(Store);

    public StateMatrixFate StateMatrixFate => new(Store);

    public RecordPrintRun RecordPrintRun => new(Store);

    public EditPrintRun EditPrintRun => new(Store);

    public SortPulls SortPulls => new(Store);

    public RehearseDeclaration RehearseDeclaration => new(Store);

    public DeclareEdition DeclareEdition => new(Store);

    public MendSize MendSize => new(Store);

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

using EditionRegister.Domain;
using EditionRegister.Store;
using EditionRegister.UseCases.Checking;
using EditionRegister.UseCases.Looking;
using EditionRegister.UseCases.People;
using EditionRegister.UseCases.Registers;
using EditionRegister.UseCases.LookingBack;

namespace EditionRegister.UseCases;

/// <summary>An open register: its settings, and everything a person can do with it.</summary>
public sealed partial class Register
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

    public CheckRegister CheckRegister => new(Store);

    public AcceptFinding AcceptFinding => new(Store);

    public TakeAcceptanceBack TakeAcceptanceBack => new(Store);

    public LookBack LookBack => new(Store);

    public LookAround LookAround => new(Store);

    public ListImpressions ListImpressions => new(Store);

    /// <summary>A chest that is still shut; keep it once it is open.</summary>
    public PlanChest PlanChest => new(Store, _by());

    internal RegisterStore Store { get; }

    /// <summary>The register in a folder. Whether it can be read, and written, shows when that is done.</summary>
    public static Register Open(RegisterFolder folder, Surroundings? surroundings = null, long? by = null) =>
        new(folder, surroundings ?? Surroundings.Usual, by);
}

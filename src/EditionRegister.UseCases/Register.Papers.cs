using EditionRegister.UseCases.Documents;
using EditionRegister.UseCases.Inventory;
using EditionRegister.UseCases.Pictures;
using EditionRegister.UseCases.ReadingIn;

namespace EditionRegister.UseCases;

// What is printed, written out, read in and pictured.
public sealed partial class Register
{
    public KnownNumbers KnownNumbers => new(Store);

    public HoldSheet HoldSheet => new(Store);

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

    public UndoBatch UndoBatch => new(Store);

    public ReadIn ReadIn => new(Store, Settings);
}

using EditionRegister.UseCases.Impressions;
using EditionRegister.UseCases.Passes;
using EditionRegister.UseCases.Planning;
using EditionRegister.UseCases.Words;
using EditionRegister.UseCases.Works;

namespace EditionRegister.UseCases;

// What is done at the bench: works, matrices, print runs, passes, pulls and words of the register's own.
public sealed partial class Register
{
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

    public VarySheets VarySheets => new(Store);

    public LinkGhost LinkGhost => new(Store);

    public DedicateSheets DedicateSheets => new(Store);

    public ReplaceSheet ReplaceSheet => new(Store);

    public AddKind AddKind => new(Store);

    public EditKind EditKind => new(Store);

    public AddFault AddFault => new(Store);

    public AddTechnique AddTechnique => new(Store);

    public ReadTextsAgain ReadTextsAgain => new(Store);

    public InscribeImpressions InscribeImpressions => new(Store);

    public PutInscriptionBack PutInscriptionBack => new(Store);

    public PriceImpressions PriceImpressions => new(Store);
}

using EditionRegister.UseCases.Conditions;
using EditionRegister.UseCases.Moves;
using EditionRegister.UseCases.Shows;
using EditionRegister.UseCases.Stock;

namespace EditionRegister.UseCases;

// Where sheets go and whose they are, what is counted, examined and shown.
public sealed partial class Register
{
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
}

namespace EditionRegister.Domain.Integrity;

/// <summary>Every rule over one work, in the order in which findings are told.</summary>
public static class Rules
{
    public static IReadOnlyList<IRule> All { get; } =
    [
        new NumbersAreUnique(),
        new NumbersWithinSize(),
        new TotalsMatch(),
        new ClosedEditionsAreAccountedFor(),
        new PencilAgreesWithRecord(),
        new InscriptionsAgreeWithRecord(),
        new SheetsBalance(),
        new PassesBalance(),
        new PassesFollow(),
        new PassUsesMatrixAsItWas(),
        new LeftOutSheetsBearNoNumber(),
        new ReductionsAreNotReprinted(),
        new ChainsHold(),
        new EntitlementsAreKept(),
        new GhostsFollowTheirPrints(),
        new ReplacedSheetsBearNoNumber(),
        new ShortEditionsSaySo(),
        new RanksFitThePrinting(),
        new ReservedSheetsAreStillToBeHad(),
        new CertificatesAgree(),
        new SetsAreWhole(),
        new WorkedOverSheetsAreOnePaper(),
        new StockTakesAgree(),
        new ConditionsAreKnownWhenLent(),
        new DamageOnTheWayIsTakenUp(),
        new SizesAgree(),
        new ValuesAreReadable(),
    ];
}

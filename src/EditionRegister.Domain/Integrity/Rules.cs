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
        new SheetsBalance(),
        new LeftOutSheetsBearNoNumber(),
        new ReductionsAreNotReprinted(),
        new ChainsHold(),
        new ReservedSheetsAreStillToBeHad(),
        new CertificatesAgree(),
        new ValuesAreReadable(),
    ];
}

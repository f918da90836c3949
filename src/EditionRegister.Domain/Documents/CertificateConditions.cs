using EditionRegister.Domain.Editions;
using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.Integrity;
using EditionRegister.Domain.Works;

namespace EditionRegister.Domain.Documents;

/// <summary>Whether a certificate may be issued: for a numbered sheet of an edition that is ours and whole, whose facts do not contradict each other.</summary>
public static class CertificateConditions
{
    // What a certificate states: numbers, edition, matrix and printing. Where a sheet is and whose, and how many sheets were spoiled, it does not say.
    private static readonly string[] AboutWhatIsStated =
    [
        nameof(NumbersAreUnique), nameof(NumbersWithinSize), nameof(TotalsMatch), nameof(ClosedEditionsAreAccountedFor), nameof(PencilAgreesWithRecord),
        nameof(LeftOutSheetsBearNoNumber), nameof(ReductionsAreNotReprinted), nameof(SetsAreWhole), nameof(ValuesAreReadable),
    ];

    /// <param name="work">The work whole.</param>
    /// <param name="impression">One of its impressions.</param>
    /// <param name="supersedes">The serial of the certificate that the new one takes the place of, or null.</param>
    /// <exception cref="RefusedException">The first reason why none can be issued.</exception>
    public static void Demand(Work work, Impression impression, string? supersedes = null)
    {
        ArgumentNullException.ThrowIfNull(work);
        ArgumentNullException.ThrowIfNull(impression);

        if (Refusal(work, impression, supersedes) is { } refusal)
        {
            throw refusal;
        }
    }

    private static RefusedException? Refusal(Work work, Impression impression, string? supersedes)
    {
        var edition = work.EditionOf(impression);
        var sheet = work.CalledSheet(impression);

        return !IsKept(work, impression) ? CertificateRefusals.NotKept(sheet, impression.Standing)
            : edition is null || work.NumberingOf(impression)?.Spell(impression.Number) is null ? CertificateRefusals.NotNumbered(sheet)
            : !edition.IsOurs ? CertificateRefusals.NotOurs(sheet)
            : !edition.IsWhole ? CertificateRefusals.PartlyKnown(sheet)
            : impression.ValidCertificate is { } standing && standing.Serial != supersedes ? CertificateRefusals.StandsAlready(sheet, standing.Serial)
            : supersedes is not null && impression.ValidCertificate is null ? CertificateRefusals.NothingToSupersede(sheet, supersedes)
            : Contradictions(work, impression, edition) is { Count: > 0 } contradictions ? CertificateRefusals.Contradicted(sheet, contradictions)
            : null;
    }

    private static bool IsKept(Work work, Impression impression) =>
        impression.IsKept || (impression.Standing == "held-out" && work.NumberingOf(impression)?.Kind is { InSize: false });

    private static List<Finding> Contradictions(Work work, Impression impression, Edition edition) =>
    [
        .. from rule in Rules.All
           where AboutWhatIsStated.Contains(rule.Name)
           from finding in rule.Check(work)
           where finding.Severity == Severity.Contradiction && Concerns(work, impression, edition, finding)
           select finding,
    ];

    private static bool Concerns(Work work, Impression impression, Edition edition, Finding finding) => finding.Subject.Kind switch
    {
        "impression" when finding.Rule == nameof(NumbersAreUnique) => IsOfEdition(work, edition, finding.Subject.Id),
        "impression" => finding.Subject.Id == impression.Id,
        "numbering" => edition.Numberings.Any(numbering => numbering.Id == finding.Subject.Id),
        "edition" => finding.Subject.Id == edition.Id,
        "print-run" => finding.Subject.Id == impression.Run,
        _ => true,
    };

    // A number borne twice makes the edition larger than the certificate of any sheet of it says.
    private static bool IsOfEdition(Work work, Edition edition, long sheet) =>
        work.Impressions.FirstOrDefault(other => other.Id == sheet) is { } found && work.EditionOf(found)?.Id == edition.Id;
}

using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.Works;

namespace EditionRegister.Domain.Integrity;

/// <summary>Of a sheet and its replacement one bears the number, and no number was made.</summary>
public sealed class ReplacedSheetsBearNoNumber : IRule
{
    public string Name => nameof(ReplacedSheetsBearNoNumber);

    public string Sentence => "A sheet that another took the place of bears no number any more and has no valid certificate.";

    public string Basis => "arithmetic: where both bore one, the edition would have grown by a sheet";

    public IEnumerable<Finding> Check(Work work) =>
        from sheet in work.Impressions
        let link = Replacement.Of(sheet)
        where link is not null
        let old = work.Impressions.FirstOrDefault(other => other.Id == link.Other)
        where old is not null
        from finding in Check(work, sheet, old)
        select finding;

    private IEnumerable<Finding> Check(Work work, Impression sheet, Impression old)
    {
        if (old.Number is not null)
        {
            yield return this.Contradiction(
                work.SubjectOf(old),
                $"{work.CalledSheet(old)} was replaced by {sheet.ShownCode}, and still has a number.",
                "Look at both sheets: take the number of the old one back, or correct which sheet took the place of which.");
        }

        if (old.ValidCertificate is { } certificate)
        {
            yield return this.Contradiction(
                work.SubjectOf(old),
                $"Certificate {certificate.Serial} is valid, and its sheet, {old.ShownCode} of {work.Called}, was replaced by {sheet.ShownCode}.",
                "Ask for the certificate back; compare with the newest copy in the backups folder what became of it.");
        }
    }
}

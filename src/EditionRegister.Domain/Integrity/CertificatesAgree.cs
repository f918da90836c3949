using EditionRegister.Domain.Documents;
using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.Sizes;
using EditionRegister.Domain.Works;

namespace EditionRegister.Domain.Integrity;

/// <summary>A valid certificate says what the register says today.</summary>
public sealed class CertificatesAgree : IRule
{
    private const string Supersede = "Supersede the certificate by a new one, or correct the record where the certificate is right.";

    public string Name => nameof(CertificatesAgree);

    public string Sentence => "Of every sheet at most one certificate is valid, and it states what the register says today.";

    public string Basis => "common practice, no source; what a certificate discloses follows statutes on the sale of prints, which differ from place to place";

    public IEnumerable<Finding> Check(Work work) =>
        from sheet in work.Impressions
        let valid = sheet.Documents.Where(document => document.IsValidCertificate).ToList()
        where valid.Count > 0
        from finding in Several(work, sheet, valid).Concat(valid.SelectMany(document => Check(work, sheet, document)))
        select finding;

    private IEnumerable<Finding> Several(Work work, Impression sheet, List<IssuedDocument> valid)
    {
        if (valid.Count > 1)
        {
            yield return this.Contradiction(
                work.SubjectOf(sheet),
                $"{work.CalledSheet(sheet)} has {InWords.Figure(valid.Count)} valid certificates: {InWords.List([.. valid.Select(document => document.Serial)])}.",
                "Withdraw all but the one that was handed over.");
        }
    }

    private IEnumerable<Finding> Check(Work work, Impression sheet, IssuedDocument document)
    {
        if (NoLongerNumbered(work, sheet) is { } why)
        {
            return [this.Contradiction(work.SubjectOf(sheet), $"Certificate {document.Serial} is valid, and the sheet it was issued for, {sheet.ShownCode} of {work.Called}, {why}.", "Withdraw the certificate, or correct the record of the sheet.")];
        }

        // An erased statement leaves nothing to compare.
        return document.Statement is null ? []
            : CertificateStatementText.Read(document.Statement) is { } statement ? Differences(work, sheet, document, statement)
            : [this.Contradiction(work.SubjectOf(sheet), $"What certificate {document.Serial} for {Sheet(work, sheet)} states cannot be read.", "Compare with the newest copy in the backups folder, and go on from the copy that agrees.")];
    }

    private static string? NoLongerNumbered(Work work, Impression sheet) =>
        sheet.Standing is "left-out" or "spare" or "pulled" ? $"is {sheet.Standing.Replace('-', ' ')}"
        : sheet.Numbering is null || sheet.Number is null ? "has no number"
        : work.NumberingOf(sheet)?.Numbers.FirstOrDefault(number => number.Ordinal == sheet.Number)?.Fate is "void" or "never-printed" or "elsewhere" ? "has a number that is not to be had"
        : null;

    private IEnumerable<Finding> Differences(Work work, Impression sheet, IssuedDocument document, CertificateStatement statement)
    {
        // How sizes were written when it was issued is not a fact of the sheet.
        var today = CertificateFacts.Of(work, sheet, SizeStyle.Millimetres)
            .Concat(SizeStyle.All.Skip(1).SelectMany(sizes => CertificateFacts.OfSizes(work.RunOf(sheet), sizes))).ToLookup(fact => fact.Key, fact => fact.Value);

        return from line in statement.Lines
               where IsOtherwise(line, today)
               select this.Find(
                   MatrixText.IsStillOpen(line.Value) ? Severity.Query : Severity.Contradiction,
                   work.SubjectOf(sheet),
                   $"Certificate {document.Serial} for {Sheet(work, sheet)} states “{line.Value}” under {line.Label}, and the register now says {(today.Contains(line.Key) ? $"“{today[line.Key].First()}”" : "nothing of it")}.",
                   Supersede);
    }

    // Compared is what it states. What it does not state it may not have known, and what was so on its day may have gone on since.
    private static bool IsOtherwise(StatementLine line, ILookup<string, string> today) =>
        today.Contains(line.Key) ? !CertificateFacts.OfTheDay.Contains(line.Key) && !today[line.Key].Contains(line.Value) : CertificateFacts.WhereTrue.Contains(line.Key);

    // In the middle of a sentence.
    private static string Sheet(Work work, Impression sheet) =>
        work.NumberShown(sheet) is null ? $"sheet {sheet.ShownCode} of {work.Called}" : work.CalledSheet(sheet);
}

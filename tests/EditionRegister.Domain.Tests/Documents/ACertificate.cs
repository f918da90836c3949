using EditionRegister.Domain.Dates;
using EditionRegister.Domain.Documents;
using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.Sizes;
using EditionRegister.Domain.Tests.Integrity;
using EditionRegister.Domain.Works;

namespace EditionRegister.Domain.Tests.Documents;

/// <summary>Certificates issued for sheets of a work.</summary>
internal static class ACertificate
{
    public static CertificateTerms Terms(string serial = "EC-1", SizeStyle? sizes = null, string? supersedes = null) => new()
    {
        Label = key => key.ToUpperInvariant(),
        Heading = "Certificate of Impression",
        SignatureLabel = "Signature of the issuer",
        DateLabel = "Date",
        LogbookSentence = "The logbook as it stood.",
        PageWord = "Page",
        Language = "en",
        Caution = "Local law decides what a certificate must say.",
        Page = PageSize.A4,
        Link = "https://example.org/x",
        Serial = serial,
        Issued = "2026-03-07",
        Sizes = sizes ?? SizeStyle.Millimetres,
        Supersedes = supersedes,
    };

    public static Work Issued(this Work work, string number, string serial = "EC-1", SizeStyle? sizes = null, string standing = "valid") =>
        work.WithSheet(number, sheet => sheet with
        {
            Documents = [.. sheet.Documents, new IssuedDocument(1, 1, "certificate", serial, RecordedDate.Read("2026-03-07"), standing, null, CertificateStatementText.Write(CertificateComposer.Compose(work, sheet, Terms(serial, sizes))))],
        });
}

using EditionRegister.Domain.Documents;
using EditionRegister.Domain.Impressions;
using EditionRegister.Store.Reading;

namespace EditionRegister.UseCases.Documents;

/// <summary>The certificate that stands for a sheet, as it was frozen, with the logbook as it stood when it was issued.</summary>
internal sealed record StandingCertificate(string Serial, CertificateStatement Statement, LogbookHead Head)
{
    /// <exception cref="Domain.RefusedException">certificate-none-stands, certificate-statement-lost.</exception>
    public static StandingCertificate Of(Reader reader, Impression sheet)
    {
        var document = sheet.ValidCertificate ?? throw DocumentRefusals.NoneStands(sheet);

        return new StandingCertificate(
            document.Serial,
            CertificateStatementText.Read(document.Statement) ?? throw DocumentRefusals.StatementLost(document.Serial),
            reader.HeadAt(document.V));
    }
}

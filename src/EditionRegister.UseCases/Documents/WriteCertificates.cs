using EditionRegister.Domain;
using EditionRegister.Domain.Documents;
using EditionRegister.Formats.Documents;
using EditionRegister.Store;
using EditionRegister.UseCases.Choosing;

namespace EditionRegister.UseCases.Documents;

/// <summary>Draws the certificates that stand, from their frozen statements, as one PDF each.</summary>
public sealed class WriteCertificates(RegisterStore store)
{
    /// <summary>Answers the files written, in the order chosen.</summary>
    /// <param name="choice">Which impressions.</param>
    /// <param name="folder">Where to; null is the register's exports folder.</param>
    /// <exception cref="RefusedException">certificate-none-stands, certificate-statement-lost.</exception>
    public IReadOnlyList<string> Run(ImpressionChoice choice, string? folder = null)
    {
        var standing = store.Read(reader => ImpressionsChosen.Find(reader, choice)
            .SelectMany(chosen => chosen.Sheets)
            .Select(sheet => sheet.ValidCertificate ?? throw DocumentRefusals.NoneStands(sheet))
            .Select(document => (
                document.Serial,
                Statement: CertificateStatementText.Read(document.Statement) ?? throw DocumentRefusals.StatementLost(document.Serial),
                Head: reader.HeadAt(document.V)))
            .ToList());

        return
        [
            .. standing.Select(certificate => Output.Write(
                Path.Combine(folder ?? store.Folder.Exports, $"certificate-{certificate.Serial}.pdf"),
                stream => CertificatePdf.Write(stream, certificate.Statement, certificate.Head))),
        ];
    }
}

using EditionRegister.Domain;
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
            .Select(sheet => StandingCertificate.Of(reader, sheet))
            .ToList());

        return
        [
            .. standing.Select(certificate => Output.Write(
                Path.Combine(folder ?? store.Folder.Exports, $"certificate-{certificate.Serial}.pdf"),
                stream => CertificatePdf.Write(stream, certificate.Statement, certificate.Head))),
        ];
    }
}

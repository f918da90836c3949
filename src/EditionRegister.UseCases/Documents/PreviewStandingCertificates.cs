using EditionRegister.Domain;
using EditionRegister.Domain.Documents;
using EditionRegister.Domain.Impressions;
using EditionRegister.Store;
using EditionRegister.Store.Reading;
using EditionRegister.UseCases.Choosing;

namespace EditionRegister.UseCases.Documents;

/// <summary>Shows the certificates that stand as they would be drawn again, sheet by sheet, from their frozen statements.</summary>
public sealed class PreviewStandingCertificates(RegisterStore store)
{
    /// <exception cref="RefusedException">What was chosen cannot be found.</exception>
    public IReadOnlyList<CertificatePreview> Run(ImpressionChoice choice) => store.Read(reader => ImpressionsChosen.Find(reader, choice)
        .SelectMany(chosen => chosen.Sheets)
        .Select(sheet => Of(reader, sheet))
        .ToList());

    private static CertificatePreview Of(Reader reader, Impression sheet)
    {
        try
        {
            var (_, statement, head) = StandingCertificate.Of(reader, sheet);

            return new CertificatePreview(sheet.ShownCode, statement, null) { Head = head };
        }
        catch (RefusedException refusal)
        {
            return new CertificatePreview(sheet.ShownCode, null, refusal.Message);
        }
    }
}

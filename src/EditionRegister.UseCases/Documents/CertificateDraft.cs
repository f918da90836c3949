using EditionRegister.Domain.Documents;
using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.Works;
using EditionRegister.Formats.Templates;
using EditionRegister.Store;

namespace EditionRegister.UseCases.Documents;

/// <summary>Composes the certificate that a sheet would get today: looking ahead and issuing state the same.</summary>
internal sealed class CertificateDraft(RegisterStore store, Domain.RegisterSettings settings)
{
    private readonly CertificateWording _wording = CertificateWording.Load(store.Folder.Templates);

    /// <param name="work">The work whole.</param>
    /// <param name="sheet">One of its impressions.</param>
    /// <param name="before">The certificate that this one takes the place of, or null.</param>
    /// <exception cref="Domain.RefusedException">A certificate stands already, or a fact it would state is contradicted.</exception>
    public CertificateStatement Of(Work work, Impression sheet, IssuedDocument? before)
    {
        CertificateConditions.Demand(work, sheet, before?.Serial);
        var serial = FormattableString.Invariant($"{sheet.ShownCode}-C{sheet.Documents.Count(document => document.Kind == "certificate") + 1}");

        return CertificateComposer.Compose(work, sheet, Terms(sheet, serial, Today.Of(store).Text!, before?.Serial));
    }

    private CertificateTerms Terms(Impression sheet, string serial, string issued, string? supersedes) => new()
    {
        Label = _wording.Label,
        Heading = _wording.Heading,
        SignatureLabel = _wording.SignatureLabel,
        DateLabel = _wording.DateLabel,
        Caution = _wording.Caution,
        LogbookSentence = _wording.Logbook,
        PageWord = _wording.Page,
        Language = _wording.Language,
        Page = settings.Page,
        Sizes = settings.Sizes,
        Link = Links.Of(settings, sheet),
        Serial = serial,
        Issued = issued,
        Supersedes = supersedes,
    };
}

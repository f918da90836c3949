using EditionRegister.Domain;
using EditionRegister.Domain.Documents;
using EditionRegister.Domain.Facts;
using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.Works;
using EditionRegister.Formats.Templates;
using EditionRegister.Store;
using EditionRegister.UseCases.Choosing;

namespace EditionRegister.UseCases.Documents;

/// <summary>Issues certificates: each is an entry that freezes its whole statement.</summary>
public sealed class IssueCertificates(RegisterStore store, RegisterSettings settings)
{
    /// <summary>Answers the serials issued, in the order chosen.</summary>
    /// <param name="choice">Which impressions.</param>
    /// <param name="supersede">Take the place of certificates that stand already.</param>
    /// <exception cref="RefusedException">A certificate stands already, or a fact it would state is contradicted; then none is issued.</exception>
    public IReadOnlyList<string> Run(ImpressionChoice choice, bool supersede = false)
    {
        var wording = CertificateWording.Load(store.Folder.Templates);
        List<string> serials = [];

        DeedOnChosen.Run(store, "issue-certificate", choice, (_, chosen, deed) =>
        {
            foreach (var sheet in chosen.Sheets)
            {
                serials.Add(Issue(chosen.Work, sheet, supersede, wording, deed));
            }
        });

        return serials;
    }

    private string Issue(Work work, Impression sheet, bool supersede, CertificateWording wording, Deed deed)
    {
        var before = supersede ? sheet.ValidCertificate : null;
        CertificateConditions.Demand(work, sheet, before?.Serial);
        var issued = Today.Of(store);
        var serial = FormattableString.Invariant($"{sheet.ShownCode}-C{sheet.Documents.Count(document => document.Kind == "certificate") + 1}");
        var statement = CertificateComposer.Compose(work, sheet, Terms(sheet, serial, issued.Text!, before?.Serial, wording));

        if (before is not null)
        {
            deed.Set("document", before.Id, ("standing", "superseded"));
        }

        var id = deed.NewId("document");
        deed.Set("document", id,
            ("kind", "certificate"), ("impression", sheet.Id), ("serial", serial), ("standing", "valid"),
            ("supersedes", before?.Id), ("statement", CertificateStatementText.Write(statement)));
        deed.SetDate("document", id, "issued", issued);

        return serial;
    }

    private CertificateTerms Terms(Impression sheet, string serial, string issued, string? supersedes, CertificateWording wording) => new()
    {
        Label = wording.Label,
        Heading = wording.Heading,
        SignatureLabel = wording.SignatureLabel,
        DateLabel = wording.DateLabel,
        Caution = wording.Caution,
        LogbookSentence = wording.Logbook,
        PageWord = wording.Page,
        Language = wording.Language,
        Page = settings.Page,
        Units = settings.Units,
        Link = Links.Of(settings, sheet),
        Serial = serial,
        Issued = issued,
        Supersedes = supersedes,
    };
}

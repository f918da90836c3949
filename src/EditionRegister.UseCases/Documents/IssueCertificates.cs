using EditionRegister.Domain;
using EditionRegister.Domain.Dates;
using EditionRegister.Domain.Documents;
using EditionRegister.Domain.Facts;
using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.Works;
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
        CertificateDraft draft = new(store, settings);
        List<string> serials = [];

        DeedOnChosen.Run(store, "issue-certificate", choice, (_, chosen, deed) =>
        {
            foreach (var sheet in chosen.Sheets)
            {
                serials.Add(Issue(chosen.Work, sheet, supersede, draft, deed));
            }
        });

        return serials;
    }

    private static string Issue(Work work, Impression sheet, bool supersede, CertificateDraft draft, Deed deed)
    {
        var before = supersede ? sheet.ValidCertificate : null;
        var statement = draft.Of(work, sheet, before);

        if (before is not null)
        {
            deed.Set("document", before.Id, ("standing", "superseded"));
        }

        var id = deed.NewId("document");
        deed.Set("document", id,
            ("kind", "certificate"), ("impression", sheet.Id), ("serial", statement.Serial), ("standing", "valid"),
            ("supersedes", before?.Id), ("statement", CertificateStatementText.Write(statement)));
        deed.SetDate("document", id, "issued", RecordedDate.Read(statement.Issued));

        return statement.Serial;
    }
}

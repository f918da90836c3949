using EditionRegister.Domain;
using EditionRegister.Domain.Documents;
using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.Works;
using EditionRegister.Store;
using EditionRegister.UseCases.Choosing;

namespace EditionRegister.UseCases.Documents;

/// <summary>A certificate looked at before it is drawn.</summary>
/// <param name="Code">The sheet, by its code as shown.</param>
/// <param name="Statement">What it states; null where there is none.</param>
/// <param name="Refusal">Why there is none, in the words with which it would be refused.</param>
public sealed record CertificatePreview(string Code, CertificateStatement? Statement, string? Refusal)
{
    /// <summary>The entry that issued it and the logbook's head then; null while it is not issued.</summary>
    public LogbookHead? Head { get; init; }
}

/// <summary>Shows the certificates that would be issued today, sheet by sheet, and issues none.</summary>
public sealed class PreviewCertificates(RegisterStore store, RegisterSettings settings)
{
    /// <param name="choice">Which impressions.</param>
    /// <param name="supersede">As if they were to take the place of certificates that stand already.</param>
    /// <exception cref="RefusedException">What was chosen cannot be found, or the wording of certificates cannot be read.</exception>
    public IReadOnlyList<CertificatePreview> Run(ImpressionChoice choice, bool supersede = false)
    {
        CertificateDraft draft = new(store, settings);

        return store.Read(reader => ImpressionsChosen.Find(reader, choice)
            .SelectMany(chosen => chosen.Sheets.Select(sheet => Of(chosen.Work, sheet, supersede, draft)))
            .ToList());
    }

    private static CertificatePreview Of(Work work, Impression sheet, bool supersede, CertificateDraft draft)
    {
        try
        {
            return new CertificatePreview(sheet.ShownCode, draft.Of(work, sheet, supersede ? sheet.ValidCertificate : null), null);
        }
        catch (RefusedException refusal)
        {
            return new CertificatePreview(sheet.ShownCode, null, refusal.Message);
        }
    }
}

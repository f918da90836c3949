using EditionRegister.Domain.Dates;
using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.Works;

namespace EditionRegister.Domain.Documents;

/// <summary>Puts the facts of an impression under their labels: the statement that is frozen when a certificate is issued.</summary>
public static class CertificateComposer
{
    /// <summary>Asks nothing; whether a certificate may be issued is for <see cref="CertificateConditions"/> to say.</summary>
    public static CertificateStatement Compose(Work work, Impression impression, CertificateTerms terms)
    {
        ArgumentNullException.ThrowIfNull(work);
        ArgumentNullException.ThrowIfNull(impression);
        ArgumentNullException.ThrowIfNull(terms);

        // Serial, issue and predecessor are lines too, so that their labels are frozen with the rest.
        IEnumerable<CertificateFact> facts =
        [
            .. CertificateFacts.Of(work, impression, terms.Sizes),
            new("serial", terms.Serial),
            new("issued", CertificateFacts.Date(RecordedDate.Read(terms.Issued))),
            .. terms.Supersedes is { } supersedes ? [new CertificateFact("supersedes", supersedes)] : Array.Empty<CertificateFact>(),
        ];

        return new CertificateStatement
        {
            Heading = terms.Heading,
            Lines = [.. facts.Select(fact => new StatementLine(fact.Key, LabelOf(terms, fact.Key, work), fact.Value))],
            Code = impression.ShownCode,
            Serial = terms.Serial,
            Issued = terms.Issued,
            Link = terms.Link,
            SignatureLabel = terms.SignatureLabel,
            DateLabel = terms.DateLabel,
            Caution = terms.Caution,
            LogbookSentence = terms.LogbookSentence,
            PageWord = terms.PageWord,
            Language = terms.Language,
            Page = terms.Page,
            Supersedes = terms.Supersedes,
        };
    }

    private static string LabelOf(CertificateTerms terms, string key, Work work) =>
        terms.Label(key).Replace("{matrix}", MatrixText.Heading(work.Matrices), StringComparison.Ordinal);
}

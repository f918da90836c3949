namespace EditionRegister.Domain.Documents;

/// <summary>Everything a certificate says, frozen when it is issued; only the logbook number and head are added when it is drawn.</summary>
public sealed record CertificateStatement
{
    public required string Heading { get; init; }

    /// <summary>What the certificate is about, in reading order.</summary>
    public required IReadOnlyList<StatementLine> Lines { get; init; }

    /// <summary>The register code as shown, such as <c>7KQ4-M2X3</c>.</summary>
    public required string Code { get; init; }

    public required string Serial { get; init; }

    /// <summary>Date of issue, ISO 8601.</summary>
    public required string Issued { get; init; }

    /// <summary>What the QR code holds; null leaves the code in readable text only.</summary>
    public required string? Link { get; init; }

    /// <summary>The line under which the issuer signs and dates by hand.</summary>
    public required string SignatureLabel { get; init; }

    public required string DateLabel { get; init; }

    /// <summary>That local law decides what a certificate must say.</summary>
    public required string Caution { get; init; }

    /// <summary>The sentence before the logbook's number and head.</summary>
    public required string LogbookSentence { get; init; }

    /// <summary>Stands before the page number where there is more than one page.</summary>
    public required string PageWord { get; init; }

    /// <summary>The language of the words, for screen readers: "en", "de".</summary>
    public required string Language { get; init; }

    public required PageSize Page { get; init; }

    /// <summary>The serial of the certificate this one takes the place of, or null.</summary>
    public string? Supersedes { get; init; }
}

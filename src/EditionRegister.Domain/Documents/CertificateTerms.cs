using EditionRegister.Domain.Sizes;

namespace EditionRegister.Domain.Documents;

/// <summary>What a certificate says that is no fact of the sheet: its wording, page and link, its serial and its day.</summary>
public sealed record CertificateTerms
{
    /// <summary>From a permanent key to the label a reader sees.</summary>
    public required Func<string, string> Label { get; init; }

    public required string Heading { get; init; }

    public required string SignatureLabel { get; init; }

    public required string DateLabel { get; init; }

    public required string Caution { get; init; }

    /// <summary>The sentence before the logbook's number and head.</summary>
    public required string LogbookSentence { get; init; }

    /// <summary>Stands before the page number where there is more than one page.</summary>
    public required string PageWord { get; init; }

    /// <summary>The language of the words, for screen readers: "en", "de".</summary>
    public required string Language { get; init; }

    public required PageSize Page { get; init; }

    /// <summary>What the QR code holds, or null.</summary>
    public string? Link { get; init; }

    public required string Serial { get; init; }

    /// <summary>Date of issue, ISO 8601.</summary>
    public required string Issued { get; init; }

    /// <summary>How sizes are written.</summary>
    public required SizeStyle Sizes { get; init; }

    /// <summary>The serial of the certificate this one takes the place of, or null.</summary>
    public string? Supersedes { get; init; }
}

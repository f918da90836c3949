using EditionRegister.Domain.Dates;

namespace EditionRegister.Domain.Impressions;

/// <summary>A document issued for one impression: its frozen statement, and whether it still stands. V is its issuing entry while it is valid.</summary>
public sealed record IssuedDocument(long Id, long V, string Kind, string Serial, RecordedDate Issued, string Standing, long? Supersedes, string? Statement)
{
    public bool IsValidCertificate => Kind == "certificate" && Standing == "valid";
}

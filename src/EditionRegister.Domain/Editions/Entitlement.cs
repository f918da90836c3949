using EditionRegister.Domain.Dates;

namespace EditionRegister.Domain.Editions;

/// <summary>Who is to have which numbers of a numbering, as agreed before the edition was divided.</summary>
public sealed record Entitlement(long Id, long V, long Numbering, int First, int Last, long Person, RecordedDate Agreed, string? Note);

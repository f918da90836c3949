using EditionRegister.Domain.Dates;

namespace EditionRegister.Domain.Impressions;

/// <summary>What one sheet is to another.</summary>
/// <param name="Id">Its row.</param>
/// <param name="Kind">ghost-of or replaces.</param>
/// <param name="Other">The other sheet.</param>
/// <param name="Made">When.</param>
/// <param name="Note">As written.</param>
public sealed record SheetLink(long Id, string Kind, long Other, RecordedDate Made, string? Note);

/// <summary>Something altered on the paper itself: what stood there, and what stands there now.</summary>
/// <param name="Id">Its row.</param>
/// <param name="Ordinal">Its place among the changes of the sheet, from one.</param>
/// <param name="What">number, title, signature, inscription or other.</param>
/// <param name="Was">What stood there.</param>
/// <param name="Became">What stands there since.</param>
/// <param name="Reason">As written.</param>
/// <param name="Changed">When.</param>
public sealed record SheetChange(long Id, int Ordinal, string What, string? Was, string? Became, string? Reason, RecordedDate Changed);

/// <summary>A sheet kept for someone, who may be nobody known yet.</summary>
/// <param name="Id">Its row.</param>
/// <param name="V">The entry that last wrote it.</param>
/// <param name="Person">For whom, or null.</param>
/// <param name="Made">Since when.</param>
/// <param name="Until">Until when.</param>
/// <param name="Standing">standing, lifted or fulfilled.</param>
/// <param name="Note">As written.</param>
public sealed record Reservation(long Id, long V, long? Person, RecordedDate Made, RecordedDate Until, string Standing, string? Note)
{
    public bool IsStanding => Standing == "standing";
}

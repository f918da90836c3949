using EditionRegister.Domain.Dates;

namespace EditionRegister.Domain.Chains;

/// <summary>One move of a sheet. Links are ordered as recorded; the date of the event is a fact of the link.</summary>
/// <param name="Id">Its row.</param>
/// <param name="V">The entry that last wrote it.</param>
/// <param name="Ordinal">Its place in the chain, from one.</param>
/// <param name="Kind">The move's word.</param>
/// <param name="From">Where the link before ended; null on the first.</param>
/// <param name="To">Where the sheet is afterwards.</param>
/// <param name="Moved">When.</param>
/// <param name="Until">Until when, for a consignment.</param>
/// <param name="Rate">The consignee's share in hundredths of a per cent.</param>
/// <param name="Note">As written.</param>
public sealed record WhereaboutsLink(
    long Id, long V, int Ordinal, string Kind, Position? From, Position To, RecordedDate Moved, RecordedDate Until, int? Rate, string? Note)
{
    /// <summary>The agreement under which it went, as written.</summary>
    public string? Agreement { get; init; }

    /// <summary>What it is insured for, in minor units of <see cref="ValueCurrency"/>.</summary>
    public long? Value { get; init; }

    /// <summary>ISO 4217.</summary>
    public string? ValueCurrency { get; init; }

    /// <summary>The show it hangs in, or null.</summary>
    public long? Show { get; init; }
}

using EditionRegister.Domain.Dates;

namespace EditionRegister.Domain.Chains;

/// <summary>One transfer of a sheet's ownership.</summary>
/// <param name="Id">Its row.</param>
/// <param name="V">The entry that last wrote it.</param>
/// <param name="Ordinal">Its place in the chain, from one.</param>
/// <param name="Kind">The transfer's word.</param>
/// <param name="From">Whose it was; null on the first.</param>
/// <param name="To">Whose it is afterwards.</param>
/// <param name="Agent">Who acted for the owner, or null.</param>
/// <param name="Passed">When.</param>
/// <param name="Price">In minor units of the currency.</param>
/// <param name="Net">What the owner received, in minor units.</param>
/// <param name="Currency">ISO 4217.</param>
/// <param name="Note">As written.</param>
public sealed record OwnershipLink(
    long Id, long V, int Ordinal, string Kind, Owner? From, Owner To, long? Agent, RecordedDate Passed, long? Price, long? Net, string? Currency, string? Note);

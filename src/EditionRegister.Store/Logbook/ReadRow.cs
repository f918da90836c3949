using EditionRegister.Domain.Facts;

namespace EditionRegister.Store.Logbook;

/// <summary>A row as an entry sets it: its open facts, and the commitment to its sealed ones.</summary>
internal sealed record ReadRow(FactTable Table, long Id, List<ReadFact> Facts, string? Commitment = null);

/// <summary>One fact of a row, by its place in the table's facts.</summary>
internal sealed record ReadFact(int Place, FactValue Value);

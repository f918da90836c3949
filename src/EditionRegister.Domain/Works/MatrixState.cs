using EditionRegister.Domain.Dates;

namespace EditionRegister.Domain.Works;

/// <summary>A state of a matrix: how far it was cut, bitten or reworked when it was printed.</summary>
public sealed record MatrixState(long Id, long V, int Ordinal, string Name, RecordedDate Reached, string? Note);

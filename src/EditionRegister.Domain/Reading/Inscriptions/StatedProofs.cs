namespace EditionRegister.Domain.Reading.Inscriptions;

/// <summary>So many proofs of a kind stated beside an edition: plus 10 artist's proofs.</summary>
/// <param name="Series">The kind by its word, as in <see cref="EditionStatement.Series"/>.</param>
/// <param name="Count">How many.</param>
public sealed record StatedProofs(string Series, int Count);

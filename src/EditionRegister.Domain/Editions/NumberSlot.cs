namespace EditionRegister.Domain.Editions;

/// <summary>One place in a numbering, with its own fate. That it is given follows from the impression that has it.</summary>
public sealed record NumberSlot(long Id, long V, int Ordinal, string Fate, string? Note);

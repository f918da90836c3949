namespace EditionRegister.Domain.Works;

/// <summary>A technique that was read in the words for how a work is printed, by its word in the register's list.</summary>
public sealed record WorkTechnique(long Id, int Ordinal, string Technique);

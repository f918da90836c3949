namespace EditionRegister.Domain.Works;

/// <summary>What a person did for a work, first named first.</summary>
public sealed record WorkRole(long Id, long Person, string Role, int Ordinal);

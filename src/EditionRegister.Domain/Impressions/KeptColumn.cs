namespace EditionRegister.Domain.Impressions;

/// <summary>A column of a file read in that the register has no place for, kept as written.</summary>
public sealed record KeptColumn(long Id, string? Header, string? Value);

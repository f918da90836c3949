namespace EditionRegister.Domain.Works;

/// <summary>What a sheet left out was worked over into, by hand: a work of its own.</summary>
/// <param name="Work">That work.</param>
/// <param name="Title">Its title, as lists show it.</param>
/// <param name="Code">The code its sheet has since, as stored; null where it has none on record.</param>
public sealed record WorkedInto(long Work, string Title, string? Code);

namespace EditionRegister.Domain.Works;

/// <summary>A sheet of another work that was worked over by hand into this one.</summary>
/// <param name="Sheet">The impression.</param>
/// <param name="Code">As stored.</param>
/// <param name="Work">The work it was printed as.</param>
/// <param name="Title">That work's title, as lists show it.</param>
public sealed record WorkedOver(long Sheet, string Code, long Work, string Title);

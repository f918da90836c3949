namespace EditionRegister.Domain.Reading.Lettering;

/// <summary>One role in a print's lettering or pencil, and whose it was.</summary>
/// <param name="Role">What was done.</param>
/// <param name="Name">As written; empty where no name stands beside the role.</param>
/// <param name="Span">Where in the text the role stands, with its name.</param>
public sealed record Lettering(LetteringRole Role, string Name, Range Span);

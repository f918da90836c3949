namespace EditionRegister.UseCases.Works;

/// <summary>Someone named beside the makers: what they did, and who, as typed.</summary>
public sealed record Contributor(string Role, string Who);

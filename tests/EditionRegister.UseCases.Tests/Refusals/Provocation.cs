namespace EditionRegister.UseCases.Tests.Refusals;

/// <summary>Something a person might do that the register refuses, under the name it is refused by.</summary>
public sealed record Provocation(string Name, Action<Studio> Do);

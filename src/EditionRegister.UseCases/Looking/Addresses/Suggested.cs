namespace EditionRegister.UseCases.Looking;

/// <summary>What was written before in fields that take any text, the words used most first; for a field to suggest, never to correct.</summary>
/// <param name="Papers">Of print runs.</param>
/// <param name="Techniques">Of works.</param>
/// <param name="Materials">Of blocks, plates and stones.</param>
/// <param name="States">Of print runs.</param>
/// <param name="People">Names in the address book, by how many works they had a part in.</param>
/// <param name="Places">Paths, by how often something was put there.</param>
public sealed record Suggested(
    IReadOnlyList<string> Papers,
    IReadOnlyList<string> Techniques,
    IReadOnlyList<string> Materials,
    IReadOnlyList<string> States,
    IReadOnlyList<string> People,
    IReadOnlyList<string> Places);

namespace EditionRegister.Domain;

/// <summary>An expected "no": what did not happen, why, and the way out, in whole sentences under a permanent name.</summary>
public sealed class RefusedException(string name, string message) : Exception(message)
{
    /// <summary>Permanent, in kebab case: what tests and <c>--json</c> call this refusal.</summary>
    public string Name { get; } = name;
}

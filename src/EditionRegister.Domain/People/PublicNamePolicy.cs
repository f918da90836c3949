using System.Diagnostics.CodeAnalysis;

namespace EditionRegister.Domain.People;

/// <summary>How much of a name is shown in public, from the whole of it to none.</summary>
public sealed record PublicNamePolicy
{
    private PublicNamePolicy(string word) => Word = word;

    /// <summary>The whole name.</summary>
    public static PublicNamePolicy Full { get; } = new("full");

    /// <summary>The given names alone.</summary>
    public static PublicNamePolicy Given { get; } = new("given");

    /// <summary>The given names, and the first letter of the family name.</summary>
    public static PublicNamePolicy GivenAndInitial { get; } = new("given-and-initial");

    /// <summary>First letters alone.</summary>
    public static PublicNamePolicy Initials { get; } = new("initials");

    /// <summary>A code that only the class can resolve.</summary>
    public static PublicNamePolicy ClassCode { get; } = new("class-code");

    public static PublicNamePolicy Unnamed { get; } = new("unnamed");

    /// <summary>A wording the person has chosen.</summary>
    public static PublicNamePolicy Wording { get; } = new("wording");

    public static IReadOnlyList<PublicNamePolicy> All { get; } = [Full, Given, GivenAndInitial, Initials, ClassCode, Unnamed, Wording];

    /// <summary>The words of all policies, as commands and forms offer them.</summary>
    public static IReadOnlyList<string> Words { get; } = [.. All.Select(policy => policy.Word)];

    /// <summary>Permanent, in kebab case: what the register, commands and CSV call it.</summary>
    public string Word { get; }

    public static bool TryFind(string? word, [NotNullWhen(true)] out PublicNamePolicy? value)
    {
        value = All.FirstOrDefault(policy => string.Equals(policy.Word, word, StringComparison.Ordinal));

        return value is not null;
    }

    public override string ToString() => Word;
}

using EditionRegister.Domain.People;

namespace EditionRegister.UseCases.People;

/// <summary>The ways a name may be shown in public, as commands and forms offer them.</summary>
public static class PublicNamePolicies
{
    public static IReadOnlyList<string> All { get; } = [.. PublicNamePolicy.All.Select(policy => policy.Word)];
}

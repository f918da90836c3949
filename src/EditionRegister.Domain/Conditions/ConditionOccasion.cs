namespace EditionRegister.Domain.Conditions;

/// <summary>Why a sheet was examined; the words are permanent.</summary>
public static class ConditionOccasion
{
    public const string AtRest = "at-rest";

    public const string GoingOut = "going-out";

    public const string ComingBack = "coming-back";

    public static IReadOnlyList<string> All { get; } = [AtRest, GoingOut, ComingBack];
}

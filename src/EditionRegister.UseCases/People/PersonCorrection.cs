namespace EditionRegister.UseCases.People;

/// <summary>What is put right about someone; null leaves a fact as it is, and an empty text takes away what may be missing.</summary>
public sealed record PersonCorrection
{
    public string? Name { get; init; }

    /// <summary>"Family, Given"; worked out from a new name when not said.</summary>
    public string? SortName { get; init; }

    /// <summary>A pupil, or anyone whose name is not for everybody.</summary>
    public bool? IsProtected { get; init; }

    public string? PublicName { get; init; }

    public string? Wording { get; init; }

    public string? ClassCode { get; init; }

    public string? Contact { get; init; }

    public string? Note { get; init; }
}

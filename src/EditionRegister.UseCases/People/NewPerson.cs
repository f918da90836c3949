namespace EditionRegister.UseCases.People;

/// <summary>A person or organisation as it is first recorded.</summary>
public sealed record NewPerson
{
    public required string Name { get; init; }

    /// <summary>"Family, Given"; the last word is taken for the family name when not said.</summary>
    public string? SortName { get; init; }

    public bool IsOrganisation { get; init; }

    /// <summary>A pupil: shown in public only as the policy says.</summary>
    public bool IsProtected { get; init; }

    /// <summary>Null is full, or initials for a protected person.</summary>
    public string? PublicName { get; init; }

    public string? Wording { get; init; }

    public string? ClassCode { get; init; }

    public string? Contact { get; init; }

    public string? Note { get; init; }

    /// <summary>Somebody else of a name the address book has already.</summary>
    public bool IsAnother { get; init; }
}

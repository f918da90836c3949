namespace EditionRegister.UseCases.People;

/// <summary>What is put right about a place; null leaves a fact as it is.</summary>
public sealed record PlaceCorrection
{
    /// <summary>Its own name, without the places around it.</summary>
    public string? Name { get; init; }

    /// <summary>The place it lies in from now on, with everything in it; empty where it lies in no other.</summary>
    public string? Inside { get; init; }

    /// <summary>Who keeps it, by name or number; empty is the studio.</summary>
    public string? Keeper { get; init; }

    /// <summary>Empty takes it away.</summary>
    public string? Note { get; init; }
}

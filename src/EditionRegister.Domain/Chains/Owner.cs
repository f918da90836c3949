namespace EditionRegister.Domain.Chains;

/// <summary>Whose a sheet is: a known person, or somebody unknown.</summary>
public sealed record Owner(string State, long? Person)
{
    public static Owner Unknown { get; } = new("unknown", null);

    public static Owner Known(long person) => new("known", person);
}

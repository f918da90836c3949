namespace EditionRegister.Domain.Chains;

/// <summary>Where a sheet is: placed (in a place), with (someone has it), unknown, or gone for good.</summary>
public sealed record Position(string State, long? Place, long? Holder)
{
    public static Position Unknown { get; } = new("unknown", null, null);

    public static Position Gone { get; } = new("gone", null, null);

    public static Position InPlace(long place) => new("placed", place, null);

    public static Position With(long holder) => new("with", null, holder);
}

namespace EditionRegister.Domain.People;

/// <summary>Where things lie. Places lie in places: studio › plan chest › drawer 3.</summary>
public sealed record Place(long Id, long V, string? Name, long? Inside, long? Keeper, string? Note);

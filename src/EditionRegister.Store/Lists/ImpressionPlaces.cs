namespace EditionRegister.Store.Lists;

/// <summary>An impression by its id, and the work it is of.</summary>
public sealed record ImpressionPlace(long Work, long Impression);

/// <summary>A page of impressions, how many there are to page through, and how many the register has in all.</summary>
public sealed record ImpressionPlaces(IReadOnlyList<ImpressionPlace> Page, int Found, int All);

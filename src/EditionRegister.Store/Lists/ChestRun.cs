using EditionRegister.Domain.Reading.Search;

namespace EditionRegister.Store.Lists;

/// <summary>A print run as the chest needs it: whose sheets it gave, and when; null where nobody said when.</summary>
public sealed record ChestRun(long Id, long Work, DaysThere? Printed);

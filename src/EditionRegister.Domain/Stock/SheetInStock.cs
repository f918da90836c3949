using EditionRegister.Domain.Dates;

namespace EditionRegister.Domain.Stock;

/// <summary>What the newest stock-take of a place says of one sheet.</summary>
/// <param name="Take">The stock-take.</param>
/// <param name="V">The entry that recorded it.</param>
/// <param name="Place">Where.</param>
/// <param name="Taken">When.</param>
/// <param name="Outcome">present, missing or stranger.</param>
public sealed record SheetInStock(long Take, long V, long Place, RecordedDate Taken, string Outcome);

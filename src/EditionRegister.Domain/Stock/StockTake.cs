using EditionRegister.Domain.Dates;

namespace EditionRegister.Domain.Stock;

/// <summary>What was looked for in a place on a day, and what was found there.</summary>
/// <param name="Id">Its row.</param>
/// <param name="V">The entry that last wrote it.</param>
/// <param name="Place">Where.</param>
/// <param name="Occasion">stock-take, delivery or return.</param>
/// <param name="Taken">When.</param>
/// <param name="Person">By whom, or null.</param>
/// <param name="Note">As written.</param>
/// <param name="Lines">Code by code.</param>
public sealed record StockTake(
    long Id, long V, long Place, string Occasion, RecordedDate Taken, long? Person, string? Note, IReadOnlyList<StockTakeLine> Lines);

/// <summary>One code of a stock-take.</summary>
/// <param name="Id">Its row.</param>
/// <param name="Ordinal">From one.</param>
/// <param name="Code">As stored, or as read where it is no code of this register.</param>
/// <param name="Impression">The sheet, or null.</param>
/// <param name="Matrix">The block or plate, or null.</param>
/// <param name="Outcome">present, missing, stranger or not-ours.</param>
public sealed record StockTakeLine(long Id, int Ordinal, string Code, long? Impression, long? Matrix, string Outcome);

using EditionRegister.Domain.Facts;

namespace EditionRegister.Store.Logbook;

/// <summary>What a batch did, row by row, in the order in which it did it.</summary>
/// <param name="Deed">The deed's name.</param>
/// <param name="First">The number of its first entry.</param>
/// <param name="Last">The number of its last entry.</param>
/// <param name="Rows">Every row it set, but for its own and for codes, which stay given for ever.</param>
/// <param name="TakesAway">It unset rows, or erased sealed facts.</param>
public sealed record BatchTraced(string Deed, long First, long Last, IReadOnlyList<RowTraced> Rows, bool TakesAway);

/// <summary>One row a batch set.</summary>
/// <param name="Root">The root of the entry.</param>
/// <param name="Table">The table.</param>
/// <param name="Id">The row.</param>
/// <param name="IsAsLeft">It still says what the batch left it to say.</param>
/// <param name="Before">What each fact the batch set said before; null where the batch made the row.</param>
/// <param name="IsErased">Something it said before was erased since, and cannot be put back.</param>
public sealed record RowTraced(string Root, string Table, long Id, bool IsAsLeft, IReadOnlyList<(string Fact, FactValue Value)>? Before, bool IsErased);

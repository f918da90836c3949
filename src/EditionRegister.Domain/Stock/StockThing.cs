namespace EditionRegister.Domain.Stock;

/// <summary>A sheet, or a block or plate, by the code it bears.</summary>
/// <param name="Work">The work it is of.</param>
/// <param name="Code">Eight characters, as stored.</param>
/// <param name="Impression">The sheet, or null.</param>
/// <param name="Matrix">The block or plate, or null.</param>
public sealed record StockThing(long Work, string Code, long? Impression, long? Matrix);

/// <summary>One line of a stock-take before it is recorded.</summary>
/// <param name="Code">As stored.</param>
/// <param name="Thing">What bears it, or null where the register never gave it.</param>
/// <param name="Outcome">One of <see cref="StockOutcome"/>.</param>
public sealed record StockFound(string Code, StockThing? Thing, string Outcome);

/// <summary>What a stock-take can come to for one code; the words are permanent.</summary>
public static class StockOutcome
{
    /// <summary>Looked for, and there.</summary>
    public const string Present = "present";

    /// <summary>Looked for, and not scanned.</summary>
    public const string Missing = "missing";

    /// <summary>Scanned, but the register has it somewhere else.</summary>
    public const string Stranger = "stranger";

    /// <summary>A good code that this register never gave.</summary>
    public const string NotOurs = "not-ours";

    public static IReadOnlyList<string> All { get; } = [Present, Missing, Stranger, NotOurs];
}

/// <summary>Why codes were scanned; the words are permanent.</summary>
public static class StockOccasion
{
    public const string StockTake = "stock-take";

    public const string Delivery = "delivery";

    public const string Return = "return";
}

namespace EditionRegister.Domain.Stock;

/// <summary>What was looked for against what was scanned.</summary>
public static class StockComparison
{
    /// <summary>First what was scanned, in that order, then what is missing, in the order in which it was looked for.</summary>
    /// <param name="expected">What should be there.</param>
    /// <param name="scanned">Codes as scanned, each once, with what bears them.</param>
    public static IReadOnlyList<StockFound> Of(IReadOnlyList<StockThing> expected, IReadOnlyList<(string Code, StockThing? Thing)> scanned)
    {
        ArgumentNullException.ThrowIfNull(expected);
        ArgumentNullException.ThrowIfNull(scanned);

        var wanted = expected.Select(thing => thing.Code).ToHashSet(StringComparer.Ordinal);
        var read = scanned.Select(scan => scan.Code).ToHashSet(StringComparer.Ordinal);

        return
        [
            .. scanned.Select(scan => new StockFound(scan.Code, scan.Thing, OutcomeOf(scan.Thing, wanted.Contains(scan.Code)))),
            .. expected.Where(thing => !read.Contains(thing.Code)).Select(thing => new StockFound(thing.Code, thing, StockOutcome.Missing)),
        ];
    }

    public static string OutcomeOf(StockThing? thing, bool isExpected) =>
        thing is null ? StockOutcome.NotOurs : isExpected ? StockOutcome.Present : StockOutcome.Stranger;
}

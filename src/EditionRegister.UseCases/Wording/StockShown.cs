using EditionRegister.Domain.Stock;
using EditionRegister.UseCases.Looking;
using EditionRegister.UseCases.Stock;

namespace EditionRegister.UseCases.Wording;

/// <summary>The lines of a stock-take as tables: what does not agree first, what is present last.</summary>
public static class StockShown
{
    private static readonly ShownColumn[] Columns = [new("code"), new("what"), new("the register now says"), new("proposed")];

    public static IReadOnlyList<ShownTable> Tables(StockTakeSeen seen)
    {
        ArgumentNullException.ThrowIfNull(seen);

        var (present, missing) = seen.Take.Occasion switch
        {
            StockOccasion.Delivery => ("Handed over:", "Was to go and was not handed over:"),
            StockOccasion.Return => ("Back:", "Still out:"),
            _ => ("Present:", "Missing: should lie here and was not scanned:"),
        };

        return
        [
            Of(seen, missing, StockOutcome.Missing),
            Of(seen, seen.Take.Occasion switch { StockOccasion.Delivery => "Strangers: scanned, and were not to go:", StockOccasion.Return => "Strangers: scanned, and were not awaited:", _ => "Strangers: scanned, and the register had them elsewhere:" }, StockOutcome.Stranger),
            Of(seen, "Not ours: good codes that this register never gave:", StockOutcome.NotOurs),
            Of(seen, present, StockOutcome.Present),
        ];
    }

    /// <summary>In one word what a scanned code came to.</summary>
    public static string Outcome(string outcome) => outcome == StockOutcome.NotOurs ? "not ours" : outcome;

    private static ShownTable Of(StockTakeSeen seen, string heading, string outcome) => new(
        heading, Columns, [.. seen.Lines.Where(line => line.Outcome == outcome).Select(Row)]);

    private static string[] Row(StockLineSeen line) => [line.Code, line.Called, line.Now, line.Proposed ?? ""];
}

using EditionRegister.Domain.Codes;
using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.Stock;
using EditionRegister.Domain.Works;
using EditionRegister.Store.Reading;

namespace EditionRegister.UseCases.Stock;

/// <summary>One line of a stock-take as it stands by now.</summary>
/// <param name="Line">As recorded.</param>
/// <param name="Thing">What bears the code, or null.</param>
/// <param name="Called">“Harbour” 3/12, or what is known of a code that is not ours.</param>
/// <param name="Now">Where the register has it by now.</param>
/// <param name="IsOpen">The register does not yet say what was found.</param>
/// <param name="Proposed">What would settle it, in words; or that it is settled; null where there is nothing to settle.</param>
public sealed record StockLineSeen(StockTakeLine Line, StockThing? Thing, string Called, string Now, bool IsOpen, string? Proposed)
{
    public string Outcome => Line.Outcome;

    /// <summary>The code as people see it.</summary>
    public string Code => RegisterCode.TryParse(Line.Code, out var code) ? code.ToString() : Line.Code;
}

/// <summary>Looks at the lines of stock-takes again: what is settled by now, and what is open still.</summary>
internal sealed class StockLines(Reader reader, WorksAtHand works)
{
    public IReadOnlyList<StockLineSeen> Of(StockTake take) => [.. take.Lines.Select(line => Of(take, line))];

    private StockLineSeen Of(StockTake take, StockTakeLine line)
    {
        if (reader.StockOf(line.Code) is not { } thing)
        {
            return new StockLineSeen(line, null, "a code this register never gave", "", IsOpen: false, null);
        }

        var isOpen = IsOpen(take, line, thing);

        return new StockLineSeen(line, thing, works.Called(thing), works.Where(thing), isOpen, isOpen ? Proposed(line.Outcome, thing) : MayBeOpen(take, line) ? "settled" : null);
    }

    /// <summary>What has moved since is settled, whichever way: the register has a later word of it.</summary>
    private bool IsOpen(StockTake take, StockTakeLine line, StockThing thing)
    {
        if (!MayBeOpen(take, line))
        {
            return false;
        }

        var (sheet, matrix) = (works.Sheet(thing), works.Matrix(thing));
        var place = sheet is not null ? sheet.Where?.Place : matrix?.Place;

        return sheet?.Whereabouts.Any(link => link.V > take.V) != true
            && (line.Outcome == StockOutcome.Stranger ? place != take.Place : reader.Book.IsWithin(place, take.Place) && reader.FoundSince(take.Id, line.Code) is null);
    }

    /// <summary>What was not handed over, or did not come back, is no more to be settled than what is present.</summary>
    private static bool MayBeOpen(StockTake take, StockTakeLine line) => line.Outcome switch
    {
        StockOutcome.Missing => take.Occasion == StockOccasion.StockTake,
        StockOutcome.Stranger => take.Occasion != StockOccasion.Delivery,
        _ => false,
    };

    private string Proposed(string outcome, StockThing thing) =>
        outcome == StockOutcome.Missing ? "whereabouts unknown"
        : works.Sheet(thing) is { } sheet && StockDeeds.HowItCame(works.Work(thing.Work), sheet) is var kind && kind != Domain.Chains.MoveKind.PutAway ? $"{kind.Name}, put away here"
        : "put away here";
}

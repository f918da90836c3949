using EditionRegister.Domain.Codes;
using EditionRegister.Domain.Dates;
using EditionRegister.Domain.Facts;
using EditionRegister.Domain.Stock;
using EditionRegister.Store;
using EditionRegister.Store.Logbook;

namespace EditionRegister.UseCases.Stock;

/// <summary>Which proposals of a stock-take are accepted.</summary>
public sealed record StockSettlement
{
    /// <summary>Strangers are put away where they were found.</summary>
    public bool PutStrangersAway { get; init; }

    /// <summary>Of what is missing nobody knows where it is.</summary>
    public bool LoseMissing { get; init; }

    /// <summary>Only these codes; null is everything that is open.</summary>
    public ScanList? Only { get; init; }

    /// <summary>When; the day of the stock-take when not said.</summary>
    public RecordedDate? Date { get; init; }
}

/// <summary>What was settled: how many things were put away where they were found, of how many nobody knows where they are, and what is open still.</summary>
public sealed record StockSettled(int PutAway, int Lost, int Open);

/// <summary>Puts the register right by what a stock-take found: only what is accepted, all of it or nothing.</summary>
public sealed class SettleStock(RegisterStore store)
{
    /// <exception cref="Domain.RefusedException">stock-take-not-found, nothing-to-settle, not-in-stock-take, not-a-stock-take, still-out, or one of the chain's.</exception>
    public StockSettled Run(long id, StockSettlement settlement) => store.Write("settle-stock", writing =>
    {
        var take = writing.Read.StockTake(id) ?? throw StockRefusals.NoSuchTake(id);

        if (take.Occasion == StockOccasion.Delivery)
        {
            throw StockRefusals.NoProposals(id);
        }

        if (take.Occasion == StockOccasion.Return && settlement.LoseMissing)
        {
            throw StockRefusals.StillOut(id);
        }

        WorksAtHand works = new(writing.Read);
        var open = new StockLines(writing.Read, works).Of(take).Where(line => line.IsOpen).ToList();
        var meant = Meant(id, settlement, open).ToList();

        if (meant.Count == 0)
        {
            throw StockRefusals.NothingOpen(id);
        }

        var date = settlement.Date ?? (take.Taken.IsKnown ? take.Taken : Today.Of(store));

        foreach (var line in meant)
        {
            Settle(writing, works, take, line, date);
        }

        var away = meant.Count(line => line.Outcome == StockOutcome.Stranger);

        return new StockSettled(away, meant.Count - away, open.Count - meant.Count);
    });

    private static IEnumerable<StockLineSeen> Meant(long id, StockSettlement settlement, List<StockLineSeen> open)
    {
        var only = settlement.Only?.Codes.Select(code => code.Text).ToHashSet(StringComparer.Ordinal);

        if (settlement.Only is { Misread: { Count: > 0 } misread })
        {
            throw StockRefusals.Misread(misread);
        }

        if (only?.FirstOrDefault(code => open.TrueForAll(line => line.Line.Code != code)) is { } unknown)
        {
            throw StockRefusals.NotInTake(id, RegisterCode.TryParse(unknown, out var shown) ? shown.ToString() : unknown);
        }

        return open.Where(line => only?.Contains(line.Line.Code) != false
            && (line.Outcome == StockOutcome.Stranger ? settlement.PutStrangersAway : settlement.LoseMissing));
    }

    private static void Settle(Writing writing, WorksAtHand works, StockTake take, StockLineSeen line, RecordedDate date)
    {
        var thing = line.Thing!;
        var deed = writing.On(Root.Work(thing.Work));
        var isHere = line.Outcome == StockOutcome.Stranger;

        switch (works.Sheet(thing), works.Matrix(thing))
        {
            case ({ } sheet, _) when isHere:
                StockDeeds.PutHere(works.Work(thing.Work), sheet, take.Place, date, deed);
                break;
            case ({ } sheet, _):
                StockDeeds.LoseSight(works.Work(thing.Work), sheet, date, deed);
                break;
            case (_, { } matrix) when isHere:
                StockDeeds.PutHere(matrix, take.Place, deed);
                break;
            case (_, { } matrix):
                StockDeeds.LoseSight(matrix, deed);
                break;
            default:
                break;
        }
    }
}

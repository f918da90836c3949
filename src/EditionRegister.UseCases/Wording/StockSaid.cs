using EditionRegister.Domain.Dates;
using EditionRegister.Domain.Stock;
using EditionRegister.UseCases.Looking;
using EditionRegister.UseCases.Stock;

namespace EditionRegister.UseCases.Wording;

/// <summary>What stock-takes, deliveries and returns came to, said alike by commands and rooms.</summary>
public static class StockSaid
{
    /// <summary>Stock-take 1 of Studio › Drawer 2, 2026-11-23.</summary>
    public static string Called(StockTakeSeen seen)
    {
        ArgumentNullException.ThrowIfNull(seen);

        var way = seen.Take.Occasion switch { StockOccasion.Delivery => "from", StockOccasion.Return => "into", _ => "of" };

        return $"{Numbered(seen)} {way} {seen.Path}, {seen.Take.Taken}";
    }

    /// <summary>22 present, 1 missing, 1 stranger, none not ours; what a delivery or a return has of these in its own words.</summary>
    public static string Counts(StockTakeSeen seen)
    {
        ArgumentNullException.ThrowIfNull(seen);

        var missing = seen.Count(StockOutcome.Missing);
        List<string> parts = seen.Take.Occasion switch
        {
            StockOccasion.Delivery => [$"{Counted.Figure(seen.Count(StockOutcome.Present))} handed over", missing == 0 ? "nothing left behind" : $"{Counted.Figure(missing)} not handed over"],
            StockOccasion.Return => [$"{Counted.Figure(seen.Count(StockOutcome.Present))} back", missing == 0 ? "nothing still out" : $"{Counted.Figure(missing)} still out"],
            _ => [$"{Counted.Figure(seen.Count(StockOutcome.Present))} present", missing == 0 ? "none missing" : $"{Counted.Figure(missing)} missing"],
        };
        parts.Add(Strangers(seen.Count(StockOutcome.Stranger)));

        if (seen.Count(StockOutcome.NotOurs) is > 0 and var others)
        {
            parts.Add($"{Counted.Figure(others)} not ours");
        }

        return string.Join(", ", parts);
    }

    /// <summary>Once one is recorded.</summary>
    public static string Recorded(StockTakeSeen seen)
    {
        ArgumentNullException.ThrowIfNull(seen);

        return $"{Called(seen)}{(seen.Take is { Occasion: not StockOccasion.StockTake, Note: { } note } ? $", {note}" : "")}: {Counts(seen)}.{(seen.Take.Occasion == StockOccasion.StockTake ? seen.Open == 0 ? " Everything agrees with the register." : " What the register says is not changed yet." : "")}";
    }

    /// <param name="seen">As it stands by now.</param>
    /// <param name="settled">What was done.</param>
    /// <param name="day">The day the moves are dated.</param>
    public static string Settled(StockTakeSeen seen, StockSettled settled, RecordedDate day)
    {
        ArgumentNullException.ThrowIfNull(seen);
        ArgumentNullException.ThrowIfNull(settled);

        string?[] done =
        [
            settled.PutAway == 0 ? null : $"{Counted.Figure(settled.PutAway)} put away in {seen.Path}",
            settled.Lost == 0 ? null : $"whereabouts of {Counted.Figure(settled.Lost)} unknown from now on",
        ];

        return $"{Numbered(seen)}: {string.Join(", ", done.OfType<string>())}, {day}; {(settled.Open == 0 ? "nothing is" : Counted.Figure(settled.Open) + (settled.Open == 1 ? " is" : " are"))} open.";
    }

    /// <summary>Codes that were scanned more than once; null where none was.</summary>
    public static string? Repeated(ScanList scans)
    {
        ArgumentNullException.ThrowIfNull(scans);

        return scans.Repeated.Count == 0 ? null : $"Scanned again and counted once: {string.Join(", ", scans.Repeated.Select(scan => $"{scan.Read.Code} ({scan.Where})"))}.";
    }

    /// <summary>Whether anything is open, in a word or two.</summary>
    public static string Open(StockTakeSeen seen)
    {
        ArgumentNullException.ThrowIfNull(seen);

        return seen.Open == 0 ? "settled" : $"{Counted.Figure(seen.Open)} open";
    }

    private static string Numbered(StockTakeSeen seen) =>
        $"{seen.Take.Occasion switch { StockOccasion.Delivery => "Delivery", StockOccasion.Return => "Return", _ => "Stock-take" }} {Counted.Figure(seen.Take.Id)}";

    private static string Strangers(int count) => count == 0 ? "no stranger" : Counted.Of(count, "stranger");
}

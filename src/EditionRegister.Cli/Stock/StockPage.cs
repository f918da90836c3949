using System.Text.Json;
using EditionRegister.Domain.Stock;
using EditionRegister.UseCases.Looking;

namespace EditionRegister.Cli;

/// <summary>Stock-takes, deliveries and returns, as people and as machines read them.</summary>
internal static class StockPage
{
    /// <summary>What was recorded, with everything that does not agree under it.</summary>
    public static Recorded Recorded(StockTakeSeen seen, ScanList scans) => new(StockSaid.Recorded(seen), json => Write(json, seen))
    {
        More = printer =>
        {
            if (StockSaid.Repeated(scans) is { } again)
            {
                printer.Line(again);
            }

            Tables(printer, seen, withPresent: false);
            WayOn(printer, seen);
        },
    };

    public static void Print(Printer printer, StockTakeSeen seen) => printer.Show(
        text: () =>
        {
            printer.Line($"{StockSaid.Called(seen)}: {StockSaid.Counts(seen)}; {StockSaid.Open(seen)}.");
            printer.Facts(("Counted by", seen.By), ("Note", seen.Take.Note));
            Tables(printer, seen, withPresent: true);
            WayOn(printer, seen);
        },
        json: json => Write(json, seen));

    public static void Write(Utf8JsonWriter json, StockTakeSeen seen)
    {
        Short(json, seen);
        json.Each("lines", seen.Lines, line =>
        {
            json.WriteString("code", line.Code);
            json.WriteString("outcome", line.Outcome);
            json.WriteString("what", line.Called);
            json.WriteString("now", line.Now);
            json.WriteBoolean("is_open", line.IsOpen);
            json.WriteString("proposed", line.Proposed);
        });
    }

    public static void Short(Utf8JsonWriter json, StockTakeSeen seen)
    {
        json.WriteNumber("stock_take", seen.Take.Id);
        json.WriteString("occasion", seen.Take.Occasion);
        json.WriteString("place", seen.Path);
        json.Date("taken", seen.Take.Taken);
        json.WriteString("by", seen.By);
        json.WriteString("note", seen.Take.Note);

        foreach (var outcome in StockOutcome.All)
        {
            json.WriteNumber(outcome.Replace('-', '_'), seen.Count(outcome));
        }

        json.WriteNumber("open", seen.Open);
    }

    private static void Tables(Printer printer, StockTakeSeen seen, bool withPresent)
    {
        foreach (var table in StockShown.Tables(seen).SkipLast(withPresent ? 0 : 1))
        {
            printer.Section(table.Heading, [.. table.Columns.Select(column => new Column(column.Head, column.IsRight))], table.Rows);
        }
    }

    private static void WayOn(Printer printer, StockTakeSeen seen)
    {
        if (seen.Open > 0)
        {
            printer.Line();
            printer.Line($"Accept what is proposed with `edreg stock settle {Counted.Figure(seen.Take.Id)} --strangers put-away{(seen.Take.Occasion == StockOccasion.StockTake ? " --missing unknown" : "")}`; with --codes only some of it.");
        }
    }
}

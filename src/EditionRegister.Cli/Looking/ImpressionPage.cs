using EditionRegister.Domain.Sizes;
using EditionRegister.UseCases.Looking;

namespace EditionRegister.Cli;

/// <summary>One impression whole, for people.</summary>
internal static class ImpressionPage
{
    private static readonly Column[] HistoryColumns = [new("entry", IsRight: true), new("recorded"), new("deed")];

    public static void Print(Printer printer, ImpressionSeen seen, SizeStyle sizes)
    {
        var (work, sheet) = (seen.Work, seen.Impression);
        printer.Line($"{sheet.ShownCode}: {work.NumberOf(sheet)}, {Called.Work(work)}");
        printer.Line();
        printer.Facts([.. ImpressionFacts.OfTheWork(work), .. ImpressionFacts.OfTheRun(work, sheet, sizes), .. ImpressionFacts.OfTheSheet(work, sheet)]);

        foreach (var table in ImpressionTables.All(work, sheet).Append(ConditionShown.Reports(work, sheet)))
        {
            printer.Section(table.Heading, [.. table.Columns.Select(column => new Column(column.Head, column.IsRight))], table.Rows);
        }

        printer.Section("History of the work:", HistoryColumns, [.. seen.History.Select(entry => (string[])[Counted.Figure(entry.N), entry.At, Called.Plain(entry.Deed)])]);
    }
}

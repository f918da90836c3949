using EditionRegister.Domain.Chains;
using EditionRegister.Domain.Editions;
using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.Works;
using EditionRegister.UseCases.Looking;

namespace EditionRegister.Cli;

/// <summary>One impression whole, for people.</summary>
internal static class ImpressionPage
{
    private static readonly Column[] HistoryColumns = [new("entry", IsRight: true), new("recorded"), new("deed")];

    public static void Print(Printer printer, ImpressionSeen seen, string units)
    {
        var (work, sheet) = (seen.Work, seen.Impression);
        printer.Line($"{sheet.ShownCode}: {work.NumberOf(sheet)}, {Called.Work(work)}");
        printer.Line();
        printer.Facts([.. OfTheWork(work), .. OfTheRun(work, sheet, units), .. OfTheSheet(work, sheet)]);
        printer.Section("What stands on it:", [new("side"), new("manner"), new("where"), new("text")], Inscriptions(sheet));
        printer.Section("Where it was:", ChainTables.WhereaboutsColumns, ChainTables.Whereabouts(work, sheet));
        printer.Section("Whose it was:", ChainTables.OwnershipColumns, ChainTables.Ownership(work, sheet));
        printer.Section("Documents:", [new("serial"), new("kind"), new("issued"), new("standing")], [.. sheet.Documents.Select(document => (string[])[document.Serial, document.Kind, document.Issued.ToString(), document.Standing])]);
        printer.Section("Columns of the file it was read in from:", [new("column"), new("value")], [.. sheet.KeptColumns.Select(kept => (string[])[kept.Header ?? "", kept.Value ?? ""])]);
        printer.Section("History of the work:", HistoryColumns, [.. seen.History.Select(entry => (string[])[Counted.Figure(entry.N), entry.At, Called.Plain(entry.Deed)])]);
    }

    private static IEnumerable<(string, string?)> OfTheWork(Work work) =>
    [
        ("Work", $"{Counted.Figure(work.Id)}, {Called.Work(work)}"),
        ("Maker", work.ShownMaker),
        ("Year", work.Year.IsKnown ? work.Year.Text : null),
        ("Technique", work.Technique),
    ];

    private static IEnumerable<(string, string?)> OfTheRun(Work work, Impression sheet, string units)
    {
        var run = work.RunOf(sheet);

        return
        [
            ("Print run", run is null ? "unknown" : $"{Counted.Figure(run.Ordinal)} ({run.Purpose}), sheet {Counted.Figure(sheet.Ordinal)} of the pile"),
            ("Printed", run?.Printed.ToString()),
            ("Paper", run?.Paper),
            ("State", run?.State),
            ("Image", SizesShown.Show(run?.ImageHeight, run?.ImageWidth, units)),
            ("Sheet", SizesShown.Show(run?.SheetHeight, run?.SheetWidth, units)),
        ];
    }

    private static IEnumerable<(string, string?)> OfTheSheet(Work work, Impression sheet) =>
    [
        ("Standing", Standing(sheet)),
        ("Number given", Given(work, sheet)),
        ("Pencilled", sheet.Pencilled),
        ("Titled", sheet.Titled),
        ("Signed", sheet.Signature is { } signature ? $"{sheet.Signed}, “{signature}”" : sheet.Signed),
        ("Condition", sheet.Condition),
        ("For sale", Called.Plain(sheet.ForSale)),
        ("Asking price", PricesShown.Show(sheet.Asking, sheet.AskingCurrency)),
        ("Where", WhereInWords.Of(work, sheet)),
        ("Whose", WhereInWords.OwnerOf(work, sheet)),
        ("Note", sheet.Note),
    ];

    private static string Standing(Impression sheet)
    {
        var fault = sheet.Fault is null ? null : Fault.Of(sheet.Fault)?.Name ?? sheet.Fault;

        return string.Join(", ", new[] { Called.Plain(sheet.Standing), fault, sheet.FaultNote }.OfType<string>());
    }

    private static string Given(Work work, Impression sheet) =>
        work.EditionOf(sheet) is { } edition && work.NumberingOf(sheet) is { } numbering
            ? $"{numbering.Spell(sheet.Number) ?? "number unknown"}, {numbering.Kind?.Name ?? numbering.KindWord}, edition {Counted.Figure(edition.Id)}{Extent(edition)}"
            : "none";

    private static string Extent(Edition edition) => edition.IsWhole ? "" : $" ({Called.Extent(edition.Extent)})";

    private static IReadOnlyList<string>[] Inscriptions(Impression sheet) =>
        [.. sheet.Inscriptions.Select(inscription => (string[])[inscription.Side, inscription.Manner, inscription.Position ?? "", inscription.Text ?? "(erased)"])];
}

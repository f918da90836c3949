using EditionRegister.UseCases.ReadingIn;

namespace EditionRegister.Cli;

/// <summary>What reading a file in would do, or did, for people. The last line says which.</summary>
internal static class ReadInPage
{
    private static readonly Column[] ColumnColumns = [new("header of the file"), new("is taken for"), new("because")];
    private static readonly Column[] LineColumns = [new("line", IsRight: true), new("column"), new("value"), new("what")];

    public static void Print(Printer printer, ReadInReport report)
    {
        printer.Line($"{report.File}: {Counted.Of(report.Rows, "row")}{Works(report)}.");
        printer.Section("Columns:", ColumnColumns, [.. report.Columns.Select(Row)]);
        printer.Section("Remarks:", LineColumns, [.. report.Remarks.Select(Row)]);
        printer.Section("Problems:", LineColumns, [.. report.Problems.Select(Row)]);
        printer.Line();
        printer.Line(LastLine(report));
    }

    public static string LastLine(ReadInReport report) =>
        report.WasReadBefore ? $"This file was read in before, as batch {Counted.Figure(report.Batch ?? 0)}; nothing was added."
        : report.Batch is { } batch ? $"Read in as batch {Counted.Figure(batch)}."
        : report.Problems.Count > 0 ? $"Nothing was read in: put the {Counted.Of(report.Problems.Count, "problem")} right and run this again."
        : "Nothing was read in yet. Run this again with --go to read it in.";

    private static string Works(ReadInReport report) => report.WasReadBefore ? ""
        : $" of {Counted.Of(report.Works, "work")}, {Counted.Figure(report.NewWorks)} of them new";

    private static string[] Row(ColumnMatch match) =>
        [match.Header, match.Column?.Name ?? "a note, kept as written", Because(match)];

    private static string Because(ColumnMatch match) =>
        match.WasSaid ? "you said so"
        : match.Column is not null ? "guessed from its name"
        : ReadInColumn.Guess(match.Header) is { } guess ? $"another header is the {guess} already"
        : "no column is called so";

    private static string[] Row(RowProblem problem) => [Counted.Figure(problem.Line), problem.Column, problem.Value, problem.What];
}

using EditionRegister.UseCases.ReadingIn;

namespace EditionRegister.Cli;

/// <summary>What reading a file in would do, or did, for people. The last line says which.</summary>
internal static class ReadInPage
{
    private static readonly Column[] ColumnColumns = [new("header of the file"), new("is taken for"), new("because")];
    private static readonly Column[] LineColumns = [new("line", IsRight: true), new("column"), new("value"), new("what")];

    public static void Print(Printer printer, ReadInReport report)
    {
        printer.Line(ReadInShown.Heading(report));
        printer.Section("Columns:", ColumnColumns, [.. report.Columns.Select(Row)]);
        printer.Section("Remarks:", LineColumns, [.. report.Remarks.Select(Row)]);
        printer.Section("Problems:", LineColumns, [.. report.Problems.Select(Row)]);

        if (report.Readings.Count > 0)
        {
            printer.Line();
            printer.Line(ReadInShown.ReadInWords(report));

            foreach (var line in ReadInShown.Readings(report))
            {
                printer.Line(line);
            }
        }

        printer.Line();
        printer.Line(LastLine(report));
    }

    public static string LastLine(ReadInReport report) => ReadInShown.Outcome(report, "run this again", "Run this again with --go to read it in.");

    private static string[] Row(ColumnMatch match) => [match.Header, ReadInShown.Taken(match), ReadInShown.Because(match)];

    private static string[] Row(RowProblem problem) => [Counted.Figure(problem.Line), problem.Column, problem.Value, problem.What];
}

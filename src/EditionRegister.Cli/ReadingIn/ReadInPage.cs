using EditionRegister.UseCases.ReadingIn;

namespace EditionRegister.Cli;

/// <summary>What reading a file in would do, or did, for people. The last line says which.</summary>
internal static class ReadInPage
{
    private static readonly Column[] ColumnColumns = [new("header of the file"), new("is taken for"), new("because")];
    private static readonly Column[] LineColumns = [new("line", IsRight: true), new("column"), new("value"), new("what")];

    private static readonly Column[] TextColumns = [new("column"), new("as written"), new("read as")];

    public static void Print(Printer printer, ReadInReport report)
    {
        printer.Line(ReadInShown.Heading(report));
        printer.Section("Columns:", ColumnColumns, [.. report.Columns.Select(Row)]);
        printer.Section("Read in words:", TextColumns, [.. report.Texts.Different.Take(ReadInShown.MostTexts).Select(read => (string[])[read.Header, read.Text, read.As])]);

        if (ReadInShown.TextsRead(report) is { } texts)
        {
            printer.Line(texts);
        }

        printer.Section("Remarks:", LineColumns, [.. report.Remarks.Select(Row)]);
        printer.Section("Problems:", LineColumns, [.. report.Problems.Select(Row)]);
        printer.Line();
        printer.Line(LastLine(report));
    }

    public static string LastLine(ReadInReport report) => ReadInShown.Outcome(report, "run this again", "Run this again with --go to read it in.");

    private static string[] Row(ColumnMatch match) => [match.Header, ReadInShown.Taken(match), ReadInShown.Because(match)];

    private static string[] Row(RowProblem problem) => [Counted.Figure(problem.Line), problem.Column, problem.Value, problem.What];
}

using EditionRegister.Domain.Works;

namespace EditionRegister.Cli;

/// <summary>One block, plate, stone or screen whole, for people.</summary>
internal static class MatrixPage
{
    public static void Print(Printer printer, Work work, Matrix matrix)
    {
        printer.Line(matrix.ShownCode is { } code ? $"{code}: {MatrixText.Of(work, matrix)}" : MatrixText.Of(work, matrix));
        printer.Line();
        printer.Facts([.. MatrixFacts.Of(work, matrix)]);

        foreach (var table in new[] { MatrixFacts.States(matrix), MatrixFacts.Passes(work, matrix) })
        {
            printer.Section(table.Heading, [.. table.Columns.Select(column => new Column(column.Head, column.IsRight))], table.Rows);
        }
    }
}

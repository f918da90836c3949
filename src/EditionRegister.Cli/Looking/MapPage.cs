using EditionRegister.Domain.Editions;

namespace EditionRegister.Cli;

/// <summary>The map of an edition for people: its letters at a glance, then every number in words.</summary>
internal static class MapPage
{
    private const int InAGroup = 10;
    private const int OnALine = 50;

    private static readonly Column[] Columns = [new("code"), new("number"), new("is"), new("where")];

    private static readonly Column[] Shares = [new("numbers"), new("to"), new("now"), new("agreed")];

    public static void Print(Printer printer, NumberMap map)
    {
        printer.Line(EditionSaid.MapHeading(map));

        foreach (var numbering in map.Numberings)
        {
            printer.Line();
            printer.Line($"{numbering.Heading}, {numbering.Span}");
            Letters(printer, numbering.Cells);
            printer.Table(Columns, numbering.Cells.Select(Row));
        }

        printer.Section("To be divided:", Shares, [.. map.Division.Select(share => (string[])[share.Numbers, share.Person, share.Now, share.Agreed.Agreed.Text ?? ""])]);
        printer.Section("Beside the numbers:", Columns, [.. map.Beside.Select(Row)]);
        printer.Line();
        printer.Facts([.. map.Totals.Select(total => (total.Label, (string?)total.Value))]);
        printer.Line();
        printer.Facts([.. map.Legend.Select(letter => ($"{letter.Letter}", (string?)letter.Meaning))]);
    }

    /// <summary>Groups of ten, fifty to a line: hhhhhhhhhh hhsaaooooo.</summary>
    private static void Letters(Printer printer, IReadOnlyList<MapCell> cells)
    {
        foreach (var line in cells.Select(cell => cell.Letter).Chunk(OnALine))
        {
            printer.Line($"  {string.Join(' ', line.Chunk(InAGroup).Select(group => new string(group)))}");
        }
    }

    private static string[] Row(MapCell cell) => [cell.Sheet?.ShownCode ?? "", cell.Spelled, $"{cell.Letter}", cell.Where];
}

using EditionRegister.Domain.Text;

namespace EditionRegister.Tui.Pages;

/// <summary>A list drawn as lines: its headings and the rows in sight, in columns that hold whatever the text is.</summary>
internal static class ListLines
{
    // Pointer and mark stand before the first column.
    private const int Lead = 3;
    private const int Gap = 2;

    public static Line Heading(Listing rows, int width)
    {
        var widths = Widths(rows.Columns, width);

        return Line.Of(new string(' ', Lead) + string.Join(new string(' ', Gap), rows.Columns.Select((column, at) => Cell(column.Head, widths[at], column.IsRight))), Tone.Quiet);
    }

    public static IEnumerable<Line> InSight(ListPage page, int width, int height)
    {
        var rows = page.Rows;
        var widths = Widths(rows.Columns, width);
        page.KeepInSight(height);

        for (var row = page.Top; row < Math.Min(rows.Count, page.Top + height); row++)
        {
            yield return Row(rows, row, row == page.Current, widths, width);
        }
    }

    private static Line Row(Listing rows, int row, bool isHere, int[] widths, int width)
    {
        var cells = rows.Cells(row);
        var text = string.Join(new string(' ', Gap), rows.Columns.Select((column, at) => Cell(at < cells.Count ? cells[at] : "", widths[at], column.IsRight)));
        var line = $"{(isHere ? '›' : ' ')}{(rows.IsMarked(row) ? '•' : ' ')} {text}";

        return Line.Of(isHere ? TextWidth.Pad(line, width) : line, isHere ? Tone.Here : rows.ToneOf(row));
    }

    private static string Cell(string text, int width, bool isRight)
    {
        var shown = TextWidth.Cut(SafeText.Show(text), width);

        return isRight ? new string(' ', Math.Max(0, width - TextWidth.Of(shown))) + shown : TextWidth.Pad(shown, width);
    }

    /// <summary>Columns that stretch share what the others leave; where there is too little, they shrink first, and then the last ones.</summary>
    private static int[] Widths(IReadOnlyList<ListColumn> columns, int width)
    {
        var left = width - Lead - (Gap * (columns.Count - 1)) - columns.Sum(column => column.Width);
        var shares = Math.Max(1, columns.Sum(column => column.Stretch));
        var widths = columns.Select(column => column.Width + (column.Stretch > 0 ? left * column.Stretch / shares : 0)).ToArray();

        for (var at = 0; at < widths.Length; at++)
        {
            widths[at] = Math.Max(1, widths[at]);
        }

        // What division left over goes to the first that stretches.
        var first = columns.ToList().FindIndex(column => column.Stretch > 0);

        if (first >= 0)
        {
            widths[first] = Math.Max(1, widths[first] + width - Lead - (Gap * (columns.Count - 1)) - widths.Sum());
        }

        return widths;
    }
}

using EditionRegister.Domain.Text;

namespace EditionRegister.Tui.Pages;

/// <summary>A small table in a page of text: columns as wide as they need, and where a line has no room for them, their cells take several lines.</summary>
internal static class TableLines
{
    private const int Gap = 2;
    private const int Least = 6;

    /// <param name="table">Columns in which no row has anything are left out.</param>
    /// <param name="width">Terminal columns.</param>
    public static IReadOnlyList<Line> Of(ShownTable table, int width)
    {
        List<int> shown = [.. Enumerable.Range(0, table.Columns.Count).Where(at => table.Rows.Any(row => row[at].Length > 0))];
        var widths = Widths(table, shown, width);

        return
        [
            Line.Of(Joined(shown.Select((at, n) => Cell(TextWidth.Cut(table.Columns[at].Head, widths[n]), widths[n], table.Columns[at].IsRight))), Tone.Quiet),
            .. table.Rows.SelectMany(row => Row(table, shown, widths, row)),
        ];
    }

    private static IEnumerable<Line> Row(ShownTable table, List<int> shown, int[] widths, IReadOnlyList<string> row)
    {
        List<IReadOnlyList<string>> cells = [.. shown.Select((at, n) => Wrap.Of(row[at], widths[n]))];

        for (var line = 0; line < cells.Max(cell => cell.Count); line++)
        {
            yield return Joined(cells.Select((cell, n) => Cell(line < cell.Count ? SafeText.Show(cell[line]) : "", widths[n], table.Columns[shown[n]].IsRight)));
        }
    }

    private static int[] Widths(ShownTable table, List<int> shown, int width)
    {
        int[] widths = [.. shown.Select(at => table.Rows.Select(row => TextWidth.Of(SafeText.Show(row[at]))).Append(TextWidth.Of(table.Columns[at].Head)).Max())];
        var over = widths.Sum() + (Gap * (widths.Length - 1)) - width;

        // First at the blanks between words; only where that is not enough inside words too.
        int[] words = [.. shown.Select(at => table.Rows.SelectMany(row => row[at].Split(' ')).Max(word => TextWidth.Of(SafeText.Show(word))))];
        over = Narrow(widths, words, over);
        Narrow(widths, new int[widths.Length], over);

        return widths;
    }

    /// <summary>Takes columns from the widest, never below what each needs at least; answers how many are still too many.</summary>
    private static int Narrow(int[] widths, int[] least, int over)
    {
        for (; over > 0; over--)
        {
            var widest = Enumerable.Range(0, widths.Length).Where(at => widths[at] > Math.Max(Least, least[at])).OrderByDescending(at => widths[at]).FirstOrDefault(-1);

            if (widest < 0)
            {
                break;
            }

            widths[widest]--;
        }

        return over;
    }

    private static string Joined(IEnumerable<string> cells) => string.Join(new string(' ', Gap), cells).TrimEnd(' ');

    private static string Cell(string text, int width, bool isRight) =>
        isRight ? new string(' ', Math.Max(0, width - TextWidth.Of(text))) + text : TextWidth.Pad(text, width);
}

using EditionRegister.Domain.Text;

namespace EditionRegister.Cli;

/// <summary>Lays rows out in columns, two spaces apart, without blanks at the end of a line.</summary>
internal static class TextTable
{
    private const string Gap = "  ";

    public static IEnumerable<string> Lines(IReadOnlyList<Column> columns, IEnumerable<IReadOnlyList<string>> rows)
    {
        string[] heads = [.. columns.Select(column => column.Head)];
        string[][] all = [heads, .. rows.Select(row => row.Select(SafeText.Show).ToArray())];
        int[] widths = [.. columns.Select((_, i) => all.Max(row => TextWidth.Of(row[i])))];

        return all.Select(row => string.Join(Gap, row.Select((cell, i) => Cell(cell, widths[i], columns[i].IsRight))).TrimEnd(' '));
    }

    private static string Cell(string text, int width, bool isRight) =>
        isRight ? new string(' ', width - TextWidth.Of(text)) + text : TextWidth.Pad(text, width);
}

/// <summary>A column's head; amounts and counts stand on the right.</summary>
internal sealed record Column(string Head, bool IsRight = false);

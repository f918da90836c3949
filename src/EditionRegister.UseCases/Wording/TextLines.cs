using EditionRegister.Domain.Text;

namespace EditionRegister.UseCases.Wording;

/// <summary>A document of plain text: lines as they are printed, tables in columns two spaces apart.</summary>
public static class TextLines
{
    private const string Gap = "  ";

    public static IEnumerable<string> Of(ShownTable table)
    {
        ArgumentNullException.ThrowIfNull(table);

        string[] heads = [.. table.Columns.Select(column => column.Head)];
        string[][] all = [heads, .. table.Rows.Select(row => row.Select(SafeText.Show).ToArray())];
        int[] widths = [.. heads.Select((_, at) => all.Max(row => TextWidth.Of(row[at])))];

        return all.Select(row => string.Join(Gap, row.Select((cell, at) => table.Columns[at].IsRight ? new string(' ', widths[at] - TextWidth.Of(cell)) + cell : TextWidth.Pad(cell, widths[at]))).TrimEnd(' '));
    }
}

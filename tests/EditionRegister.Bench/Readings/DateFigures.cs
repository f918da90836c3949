using System.Globalization;
using EditionRegister.Domain.Reading.Dates;

namespace EditionRegister.Bench.Readings;

/// <summary>Dates of museums, with the years their cataloguers gave, against what the reader makes of the texts.</summary>
internal static class DateFigures
{
    public static void Print(string folder, TextWriter output)
    {
        var file = Directory.GetFiles(folder, "dates*.tsv").Order(StringComparer.Ordinal).FirstOrDefault();

        if (file is null)
        {
            output.WriteLine("dates: no dates*.tsv there.");

            return;
        }

        var table = TableFile.Read(file);
        List<DateRow> rows = [.. table.Rows.Select(row => DateRow.Of(table, row)).OfType<DateRow>()];

        PrintCounts(rows, Path.GetFileName(file), output);
        PrintYearless(table, output);
        DateSpeed.Print(output);
        PrintDisagreements(rows, output);
    }

    private static void PrintCounts(List<DateRow> rows, string file, TextWriter output)
    {
        Line(output, $"dates: {rows.Count} rows with years of {file}; not read {rows.Count(row => row.Read is null)}");
        Line(output, $"  the date itself: overlap {Share(rows, row => row.Overlaps(row.Main))}, equal {Share(rows, row => row.IsEqual(row.Main))}, mean excess width {rows.Average(row => row.Excess):0.00} years");
        Line(output, $"  the date itself or the whole of what is said: overlap {Share(rows, row => row.Overlaps(row.Main) || row.Overlaps(row.Whole))}, equal {Share(rows, row => row.IsEqual(row.Main) || row.IsEqual(row.Whole))}");
        Line(output, $"  and equal to any museum's years for the same text: {Share(rows, row => row.IsEqualToAny)}");
    }

    private static void PrintYearless(TableFile table, TextWriter output)
    {
        List<string> texts = [.. table.Rows.Where(row => DateRow.IsWithoutYear(table, row)).Select(row => table[row, "text"])];

        Line(output, $"  0..0, no year by the museum: {texts.Count} more rows, of which {texts.Count(text => DateReader.Read(text) is { IsUndated: true })} are read as undated");
    }

    private static void PrintDisagreements(List<DateRow> rows, TextWriter output)
    {
        List<DateRow> differing = [.. rows.Where(row => !row.IsEqual(row.Main) && !row.IsEqual(row.Whole))];

        foreach (var cause in differing.GroupBy(row => row.Cause).OrderByDescending(cause => cause.Count()).ThenBy(cause => cause.Key, StringComparer.Ordinal))
        {
            Line(output, $"  {cause.Key}: {cause.Count()}, of which apart {cause.Count(IsApart)}");
        }

        foreach (var row in differing.OrderBy(row => IsApart(row) ? 0 : 1).ThenBy(row => row.Cause, StringComparer.Ordinal).ThenBy(row => row.Text, StringComparer.Ordinal))
        {
            Line(output, $"  {(IsApart(row) ? "APART, " : "")}{row.Cause}  {row.Text} | museum {row.From}..{row.To} | read {row.Read?.Earliest}..{row.Read?.Latest} {row.Read?.Edtf} | whole {row.Whole?.Earliest}..{row.Whole?.Latest} | {row.OtherReadings}");
        }
    }

    private static bool IsApart(DateRow row) => !row.Overlaps(row.Main) && !row.Overlaps(row.Whole);

    private static string Share(List<DateRow> rows, Func<DateRow, bool> holds) => string.Create(CultureInfo.InvariantCulture, $"{rows.Count(holds)} ({100.0 * rows.Count(holds) / rows.Count:0.0} %)");

    private static void Line(TextWriter output, FormattableString line) => output.WriteLine(line.ToString(CultureInfo.InvariantCulture));
}

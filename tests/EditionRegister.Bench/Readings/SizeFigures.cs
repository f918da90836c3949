using System.Globalization;
using EditionRegister.Domain.Reading.Sizes;

namespace EditionRegister.Bench.Readings;

/// <summary>Sizes of museums, with their own figures, against what the reader makes of the texts.</summary>
internal static class SizeFigures
{
    private const long Sixteenth = 25_400 / 16;

    public static void Print(string folder, TextWriter output)
    {
        Dimensions(folder, output);
        Fractions(folder, output);
    }

    private static void Dimensions(string folder, TextWriter output)
    {
        var file = Directory.GetFiles(folder, "dimensions*.tsv").Order(StringComparer.Ordinal).FirstOrDefault();

        if (file is null)
        {
            return;
        }

        var table = TableFile.Read(file);
        var (rows, right, pairs, differ, declinedCount) = (0, 0, 0, 0, 0);
        List<string> disagreements = [];

        foreach (var row in table.Rows)
        {
            var whole = SizeReader.Read(table[row, "text"]);
            var read = whole.Sizes;
            declinedCount += whole.Declined.Count;
            disagreements.AddRange(whole.Declined.Select(declined => $"declined  {table[row, "text"]} | {declined.WhyNot}"));
            pairs += read.Count(part => part.Agreement != Agreement.OneSystem);
            differ += read.Count(part => part.Agreement == Agreement.Differ);
            disagreements.AddRange(read.Where(part => part.Agreement == Agreement.Differ).Select(part => $"systems differ  {table[row, "text"][part.Span]}"));

            if (Figure(table[row, "museum_width"], table[row, "unit"]) is not { } width || Figure(table[row, "museum_height"], table[row, "unit"]) is not { } height)
            {
                continue;
            }

            rows++;

            // Tate's width is the first number of the text; the others name their own.
            var (first, second) = table[row, "dataset"] == "tate" ? (width, height) : (height, width);
            var found = read.Any(part => part.Height is { } high && Near(high, first) && part.Width is { } other && Near(other, second));
            right += found ? 1 : 0;
            disagreements.AddRange(found ? [] : [$"size  {table[row, "dataset"]} {table[row, "text"]} | {first / 1000.0} {second / 1000.0} | {string.Join("; ", read.Select(part => $"{part.Part} {part.Height / 1000.0}x{part.Width / 1000.0}"))}"]);
        }

        output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"sizes: {rows} rows with values of {Path.GetFileName(file)}; within 1 mm or 1/16 in {right} ({100.0 * right / rows:0.0} %); {pairs} sizes in two systems, {differ} differ by more than rounding; {declinedCount} declined"));
        disagreements.ForEach(line => output.WriteLine("  " + line));
    }

    private static void Fractions(string folder, TextWriter output)
    {
        var path = Path.Combine(folder, "dimension_fractions.tsv");

        if (!File.Exists(path))
        {
            return;
        }

        var table = TableFile.Read(path);
        var right = 0;
        List<string> disagreements = [];

        foreach (var row in table.Rows)
        {
            var metric = Figure(table[row, "metric_value"], table[row, "metric_unit"]) ?? 0;
            var read = SizeReader.Read($"{table[row, "text"]} {table[row, "unit"]}").Sizes;
            var found = read is [{ Height: { } high }] && Near(high, metric);
            right += found ? 1 : 0;
            disagreements.AddRange(found ? [] : [$"fraction  {table[row, "text"]} | {metric / 1000.0} | {string.Join("; ", read.Select(one => one.Height / 1000.0))}"]);
        }

        output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"fractions: {table.Rows.Count} rows; within 1 mm or 1/16 in {right} ({100.0 * right / table.Rows.Count:0.0} %)"));
        disagreements.ForEach(line => output.WriteLine("  " + line));
    }

    private static bool Near(long one, long other) => Math.Abs(one - other) <= Math.Max(1_000, Sixteenth);

    private static long? Figure(string text, string unit) =>
        !decimal.TryParse(text, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var value) ? null
        : (long)(value * (unit.StartsWith("cm", StringComparison.Ordinal) ? 10_000 : unit.StartsWith("in", StringComparison.Ordinal) ? 25_400 : 1_000));
}

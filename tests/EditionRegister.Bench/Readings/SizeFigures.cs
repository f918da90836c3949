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
        FractionFigures.Print(folder, output);
    }

    /// <summary>Within a millimetre, or a sixteenth of an inch where that is more.</summary>
    public static bool Near(long one, long other) => Math.Abs(one - other) <= Math.Max(1_000, Sixteenth);

    /// <summary>Micrometres; null where the museum gives no figure.</summary>
    public static long? Figure(string text, string unit) =>
        !decimal.TryParse(text, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var value) ? null
        : (long)(value * (unit.StartsWith("cm", StringComparison.Ordinal) ? 10_000 : unit.StartsWith("in", StringComparison.Ordinal) ? 25_400 : 1_000));

    private static void Dimensions(string folder, TextWriter output)
    {
        if (Directory.GetFiles(folder, "dimensions*.tsv").Order(StringComparer.Ordinal).FirstOrDefault() is not { } file)
        {
            return;
        }

        var table = TableFile.Read(file);
        var (rows, right, named, namedRight) = (0, 0, 0, 0);
        List<string> disagreements = [];

        foreach (var row in table.Rows)
        {
            if (Figure(table[row, "museum_width"], table[row, "unit"]) is not { } width || Figure(table[row, "museum_height"], table[row, "unit"]) is not { } height)
            {
                continue;
            }

            // Tate's width is the first number of the text; the others name their own.
            var (first, second) = table[row, "dataset"] == "tate" ? (width, height) : (height, width);
            var read = SizeReader.Read(table[row, "text"]).Sizes;
            var found = read.Any(part => Is(part, first, second));
            rows++;
            right += found ? 1 : 0;
            disagreements.AddRange(found ? [] : [$"size  {table[row, "dataset"]} {table[row, "text"]} | {first / 1000.0} {second / 1000.0} | {string.Join("; ", read.Select(part => part.Explain()))}"]);

            // "cm (image)" names the part that its figures are of.
            if (table[row, "unit"].Split('(', ')') is [_, var part, _])
            {
                named++;
                namedRight += read.Any(size => string.Equals(size.Named, part, StringComparison.OrdinalIgnoreCase) && Is(size, first, second)) ? 1 : 0;
            }
        }

        output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"sizes: {rows} rows with values of {Path.GetFileName(file)}; within 1 mm or 1/16 in {right} ({100.0 * right / rows:0.0} %); of {named} that name the part, the part of that name has them in {namedRight} ({100.0 * namedRight / Math.Max(1, named):0.0} %)"));
        Systems(table, output);
        disagreements.ForEach(line => output.WriteLine("  " + line));
    }

    private static bool Is(Measured part, long first, long second) => part.Height is { } height && part.Width is { } width && Near(height, first) && Near(width, second);

    private static void Systems(TableFile table, TextWriter output)
    {
        var read = table.Rows.Select(row => SizeReader.Read(table[row, "text"])).ToList();
        var pairs = read.SelectMany(one => one.Sizes).Where(size => size.Agreement != Agreement.OneSystem).ToList();
        var differ = pairs.Where(size => size.Agreement == Agreement.Differ).ToList();
        var declined = read.SelectMany(one => one.Declined).ToList();
        output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"  {read.Sum(one => one.Sizes.Count)} sizes in {read.Count} texts; {pairs.Count} in two systems, {differ.Count} differ by more than rounding; {declined.Count} look like a size and are not read; {read.Count(one => one.Sizes.Count + one.Declined.Count == 0)} texts without any"));
        differ.ForEach(size => output.WriteLine($"  {size.Disagreement()}"));
        declined.ForEach(one => output.WriteLine($"  {one.WhyNot}"));
    }
}

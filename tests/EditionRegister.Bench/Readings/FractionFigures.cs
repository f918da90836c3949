using System.Globalization;
using System.Text.RegularExpressions;
using EditionRegister.Domain.Reading.Sizes;

namespace EditionRegister.Bench.Readings;

/// <summary>
/// Inches as one museum wrote them, beside centimetres that it measured or worked out apart from them: where its two figures differ, no
/// reading of one can give the other. So the reader is held against what the text says, worked out here without it, and it is counted
/// apart in how many rows the museum's figures are the same within a millimetre or a sixteenth of an inch.
/// </summary>
internal static partial class FractionFigures
{
    public static void Print(string folder, TextWriter output)
    {
        var path = Path.Combine(folder, "dimension_fractions.tsv");

        if (!File.Exists(path))
        {
            return;
        }

        var table = TableFile.Read(path);
        var (near, figures, exact, same, sameRight, declined) = (0, 0, 0, 0, 0, 0);
        List<string> others = [];

        foreach (var row in table.Rows)
        {
            var metric = SizeFigures.Figure(table[row, "metric_value"], table[row, "metric_unit"]) ?? 0;
            var read = SizeReader.Read($"{table[row, "text"]} {table[row, "unit"]}");
            var height = read.Sizes is [{ Height: { } one }] ? one : (long?)null;
            near += height is { } found && SizeFigures.Near(found, metric) ? 1 : 0;

            if (Inches(table[row, "text"]) is not { } said)
            {
                declined += height is null && read.WhyNot is not null ? 1 : 0;
                others.Add($"no inches of a ruler  {table[row, "text"]} | {metric / 1000.0} mm | {read.Explain()}");
                continue;
            }

            var isSame = SizeFigures.Near(said, metric);
            figures++;
            exact += height is { } length && Math.Abs(length - said) <= 1 ? 1 : 0;
            same += isSame ? 1 : 0;
            sameRight += isSame && height is { } right && SizeFigures.Near(right, metric) ? 1 : 0;
            others.AddRange(isSame ? [] : [$"the museum's figures differ  {table[row, "text"]} in are {said / 1000.0} mm, and it has {metric / 1000.0} mm"]);
        }

        output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"fractions: {table.Rows.Count} rows; within 1 mm or 1/16 in of the museum's centimetres {near} ({100.0 * near / table.Rows.Count:0.0} %)"));
        output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"  {figures} are inches of a ruler, read as they are written {exact} ({100.0 * exact / figures:0.0} %); in {same} of them the museum's two figures are the same, within 1 mm or 1/16 in of them {sameRight} ({100.0 * sameRight / same:0.0} %); {table.Rows.Count - figures} are none, refused with a reason {declined}"));
        others.ForEach(line => output.WriteLine("  " + line));
    }

    /// <summary>Micrometres of a whole number, a decimal one, or one with halves to sixty-fourths; worked out without the reader.</summary>
    private static long? Inches(string text)
    {
        if (Written().Match(text) is not { Success: true } match)
        {
            return null;
        }

        var whole = match.Groups[1].Success ? decimal.Parse(match.Groups[1].Value, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture) : 0;
        var (above, below) = match.Groups[2].Success ? (decimal.Parse(match.Groups[2].Value, CultureInfo.InvariantCulture), decimal.Parse(match.Groups[3].Value, CultureInfo.InvariantCulture)) : (0, 1);

        return above >= below ? null : (long)Math.Round((whole + (above / below)) * 25_400);
    }

    [GeneratedRegex(@"^\s*(?:([0-9]+(?:\.[0-9]+)?)(?:\s+|$))?(?:([0-9]+)/(2|4|8|16|32|64))?\s*$", RegexOptions.CultureInvariant)]
    private static partial Regex Written();
}

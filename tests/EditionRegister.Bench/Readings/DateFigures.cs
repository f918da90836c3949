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
        var (rows, overlap, equal, notRead) = (0, 0, 0, 0);
        var excess = 0L;
        List<string> disagreements = [];

        foreach (var row in table.Rows)
        {
            if (!int.TryParse(table[row, "earliest"], NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var from) || !int.TryParse(table[row, "latest"], NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var to))
            {
                continue;
            }

            rows++;
            var read = DateReader.Read(table[row, "text"]);

            if (read is not { Earliest: { } earliest, Latest: { } latest })
            {
                notRead++;
                disagreements.Add($"not read  {table[row, "text"]} | {from}..{to}");
                continue;
            }

            overlap += earliest <= to && latest >= from ? 1 : 0;
            equal += earliest == from && latest == to ? 1 : 0;
            excess += Math.Max(0, latest - earliest - (to - from));

            if (earliest != from || latest != to)
            {
                disagreements.Add($"{(earliest <= to && latest >= from ? Cause(table[row, "text"]) : "APART")}  {table[row, "text"]} | museum {from}..{to} | read {earliest}..{latest} {read.Edtf} | {table[row, "other_readings"]}");
            }
        }

        output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"dates: {rows} rows with years of {Path.GetFileName(file)}; overlap {overlap} ({100.0 * overlap / rows:0.0} %), equal {equal} ({100.0 * equal / rows:0.0} %), not read {notRead}, mean excess width {(double)excess / rows:0.00} years"));

        foreach (var cause in disagreements.GroupBy(line => line.Split("  ")[0]).OrderByDescending(cause => cause.Count()))
        {
            output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"  {cause.Key}: {cause.Count()}"));
        }

        foreach (var line in disagreements.Order(StringComparer.Ordinal))
        {
            output.WriteLine("  " + line);
        }
    }

    private static string Cause(string text) =>
        text.Contains("c.", StringComparison.OrdinalIgnoreCase) || text.Contains("ca", StringComparison.OrdinalIgnoreCase) || text.Contains("about", StringComparison.OrdinalIgnoreCase) ? "about"
        : text.Contains("print", StringComparison.OrdinalIgnoreCase) || text.Contains("publish", StringComparison.OrdinalIgnoreCase) || text.Contains("cast", StringComparison.OrdinalIgnoreCase) ? "later printing"
        : text.Contains("century", StringComparison.OrdinalIgnoreCase) ? "century"
        : text.Contains("before", StringComparison.OrdinalIgnoreCase) || text.Contains("after", StringComparison.OrdinalIgnoreCase) ? "open end"
        : "other";
}

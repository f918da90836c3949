using System.Globalization;
using EditionRegister.Domain.Reading.Techniques;

namespace EditionRegister.Bench.Readings;

/// <summary>Mediums of museums with how often each was met, against what the reader finds in them.</summary>
internal static class TechniqueFigures
{
    public static void Print(string folder, TextWriter output)
    {
        var path = Path.Combine(folder, "mediums.tsv");

        if (!File.Exists(path))
        {
            return;
        }

        var table = TableFile.Read(path);
        var (all, matched) = (0L, 0L);
        List<(long Count, string Text)> none = [];

        foreach (var row in table.Rows)
        {
            var count = long.Parse(table[row, "count"], NumberStyles.None, CultureInfo.InvariantCulture);
            var read = TechniqueReader.Read(table[row, "text"]);
            all += count;
            matched += read.Techniques.Count > 0 ? count : 0;

            if (read.Techniques.Count == 0)
            {
                none.Add((count, table[row, "text"]));
            }
        }

        output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"techniques: {table.Rows.Count} texts standing for {all} objects; with a technique {matched} ({100.0 * matched / all:0.0} % of counts); none met in {none.Count} texts, the commonest:"));

        foreach (var (count, text) in none.OrderByDescending(one => one.Count).Take(40))
        {
            output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"  {count}  {text}"));
        }
    }
}

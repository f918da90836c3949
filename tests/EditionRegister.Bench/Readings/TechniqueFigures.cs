using System.Globalization;
using EditionRegister.Domain.Reading.Techniques;

namespace EditionRegister.Bench.Readings;

/// <summary>Mediums of museums with how often each was met, against what the reader finds in them.</summary>
internal static class TechniqueFigures
{
    public const string File = "mediums.tsv";

    private sealed record Row(string Text, long Count, TechniqueRead Read, bool NamesAPrint)
    {
        public bool IsMatched => Read.Techniques.Count > 0;
    }

    public static void Print(string folder, TextWriter output)
    {
        if (Rows(folder) is not { } rows)
        {
            output.WriteLine($"techniques: no {File} there.");

            return;
        }

        List<Row> prints = [.. rows.Where(row => row.NamesAPrint)];

        output.WriteLine($"techniques: {rows.Count} texts of {File}, standing for {Sum(rows)} objects; with a technique {Share(rows, row => row.IsMatched)} of counts");
        output.WriteLine($"  of the {prints.Count} texts that name a print (stems of words; “print” where no photograph or copy is named), {Sum(prints)} objects, with a technique {Share(prints, row => row.IsMatched)}; nothing left over {Share(prints, row => row.IsMatched && row.Read.Left.Count == 0)}");
        output.WriteLine($"  of the {rows.Count - prints.Count} texts that name none, {Sum(rows) - Sum(prints)} objects, with a technique {Share([.. rows.Except(prints)], row => row.IsMatched)}");
        output.WriteLine($"  by the first technique's family: {string.Join(", ", rows.Where(row => row.IsMatched).GroupBy(row => row.Read.Techniques[0].Family).OrderByDescending(Sum).Select(family => $"{family.Key.Name} {Sum(family)}"))}");
        List("names a print, none met", prints.Where(row => !row.IsMatched), int.MaxValue, output);
        List("names none, yet met", rows.Except(prints).Where(row => row.IsMatched), int.MaxValue, output);
        List("names none, and none met; the commonest", rows.Except(prints).Where(row => !row.IsMatched), 20, output);
    }

    private static List<Row>? Rows(string folder)
    {
        var path = Path.Combine(folder, File);

        if (!System.IO.File.Exists(path))
        {
            return null;
        }

        var table = TableFile.Read(path);

        return
        [
            .. from row in table.Rows
               let text = table[row, "text"]
               select new Row(text, long.Parse(table[row, "count"], NumberStyles.None, CultureInfo.InvariantCulture), TechniqueReader.Read(text), NamesAPrint.In(text)),
        ];
    }

    private static long Sum(IEnumerable<Row> rows) => rows.Sum(row => row.Count);

    private static string Share(IReadOnlyList<Row> rows, Func<Row, bool> isSo) =>
        string.Create(CultureInfo.InvariantCulture, $"{Sum(rows.Where(isSo))} ({100.0 * Sum(rows.Where(isSo)) / Math.Max(1, Sum(rows)):0.0} %)");

    private static void List(string what, IEnumerable<Row> rows, int most, TextWriter output)
    {
        output.WriteLine($"  {what}:");

        foreach (var row in rows.OrderByDescending(row => row.Count).ThenBy(row => row.Text, StringComparer.Ordinal).Take(most))
        {
            output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"    {row.Count}  {row.Text}{(row.IsMatched ? " | " + row.Read.InWords() : "")}"));
        }
    }
}

using EditionRegister.Domain;

namespace EditionRegister.Formats.Csv;

/// <summary>The first record of a CSV file: every column has a name, and no two the same.</summary>
internal static class CsvHeader
{
    /// <exception cref="RefusedException">A name is missing or stands twice (letter case and outer spaces aside).</exception>
    public static void Check(CsvRow header, string fileName)
    {
        HashSet<string> seen = new(StringComparer.OrdinalIgnoreCase);

        for (var i = 0; i < header.Fields.Count; i++)
        {
            var name = header.Fields[i].Trim();

            if (name.Length == 0)
            {
                throw CsvRefusals.UnnamedColumn(fileName, header.Line, i + 1);
            }

            if (!seen.Add(name))
            {
                throw CsvRefusals.SameNameTwice(fileName, header.Line, name);
            }
        }
    }
}

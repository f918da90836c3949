using System.Globalization;
using EditionRegister.Domain.Reading.Techniques;

namespace EditionRegister.Bench.Readings;

/// <summary>Mediums that were read by hand, against what the reader finds in them: part by part, with every disagreement.</summary>
internal static class TechniquesByHandFigures
{
    public const string File = "mediums_read_by_hand.tsv";

    public static void Print(string folder, TextWriter output)
    {
        var path = Path.Combine(folder, File);

        if (!System.IO.File.Exists(path))
        {
            output.WriteLine($"techniques read by hand: no {File} there.");

            return;
        }

        var table = TableFile.Read(path);
        List<string> disagreements = [];
        Dictionary<string, int> agree = new(StringComparer.Ordinal) { ["techniques"] = 0, ["colours"] = 0, ["support"] = 0, ["left"] = 0, ["all four"] = 0 };

        foreach (var row in table.Rows)
        {
            var read = TechniqueReader.Read(table[row, "text"]);
            var apart = Parts(read).Where(part => !Same(part.Name, table[row, part.Name], part.Read)).ToList();

            foreach (var part in Parts(read).Except(apart))
            {
                agree[part.Name]++;
            }

            agree["all four"] += apart.Count == 0 ? 1 : 0;
            disagreements.AddRange(apart.Select(part => $"{part.Name}  {table[row, "text"]} | by hand: {table[row, part.Name]} | read: {part.Read}"));
        }

        output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"techniques read by hand: {table.Rows.Count} texts of {File}; agree: {string.Join(", ", agree.Select(part => string.Create(CultureInfo.InvariantCulture, $"{part.Key} {part.Value}")))}"));

        foreach (var line in disagreements.Order(StringComparer.Ordinal))
        {
            output.WriteLine("  " + line);
        }
    }

    private static List<(string Name, string Read)> Parts(TechniqueRead read) =>
    [
        ("techniques", string.Join(", ", read.Techniques.Select(technique => technique.Word))),
        ("colours", read.Colours?.ToString(CultureInfo.InvariantCulture) ?? (read.InColour ? "in colour" : "")),
        ("support", read.Techniques.Count == 0 ? "" : read.Support ?? ""),
        ("left", read.Techniques.Count == 0 ? "" : string.Join("; ", read.Left)),
    ];

    /// <summary>What is left is compared by its words: how the rest of a text is cut is no reading.</summary>
    private static bool Same(string part, string byHand, string read) => part == "left" ? Words(byHand).SequenceEqual(Words(read)) : byHand == read;

    private static IEnumerable<string> Words(string left) =>
        new string([.. left.Select(c => char.IsLetterOrDigit(c) ? c : ' ')]).Split(' ', StringSplitOptions.RemoveEmptyEntries)
            .Where(word => word is not ("and" or "with" or "in" or "of" or "by" or "on" or "from" or "a" or "the"));
}

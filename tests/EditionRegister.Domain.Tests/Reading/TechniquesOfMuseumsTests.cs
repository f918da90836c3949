using System.Globalization;
using EditionRegister.Domain.Reading.Techniques;

namespace EditionRegister.Domain.Tests.Reading;

/// <summary>What is reached on the mediums of museums in tests/data (sources and licences in its README) does not sink.</summary>
public sealed class TechniquesOfMuseumsTests
{
    [Fact]
    public void At_least_927_of_1000_objects_have_a_technique_and_photographs_have_none()
    {
        var rows = Rows("mediums.tsv").Select(row => (Text: row["text"], Count: long.Parse(row["count"], CultureInfo.InvariantCulture))).ToList();

        var matched = rows.Where(row => TechniqueReader.Read(row.Text).Techniques.Count > 0).Sum(row => row.Count);

        Assert.Equal(41_839, rows.Sum(row => row.Count));
        Assert.InRange(1000 * matched / rows.Sum(row => row.Count), 927, 1000);
        Assert.All(
            rows.Where(row => row.Text.StartsWith("Photograph, ", StringComparison.Ordinal) && !row.Text.Contains("etching", StringComparison.Ordinal)),
            row => Assert.Empty(TechniqueReader.Read(row.Text).Techniques));
    }

    [Fact]
    public void At_least_98_of_100_texts_have_the_techniques_colours_and_support_read_by_hand()
    {
        var rows = Rows("mediums_read_by_hand.tsv").ToList();

        var same = rows.Count(row => Same(TechniqueReader.Read(row["text"]), row));

        Assert.Equal(100, rows.Count);
        Assert.InRange(same, 98, 100);
    }

    private static bool Same(TechniqueRead read, Dictionary<string, string> byHand) =>
        byHand["techniques"] == string.Join(", ", read.Techniques.Select(technique => technique.Word))
        && (read.Techniques.Count == 0
            || (byHand["colours"] == (read.Colours?.ToString(CultureInfo.InvariantCulture) ?? (read.InColour ? "in colour" : "")) && byHand["support"] == (read.Support ?? "")));

    private static IEnumerable<Dictionary<string, string>> Rows(string name)
    {
        var lines = File.ReadAllLines(Path.Combine(Clone.Folder, "tests", "data", name));
        var columns = lines[0].Split('\t');

        return lines.Skip(1).Select(line => line.Split('\t').Index().ToDictionary(cell => columns[cell.Index], cell => cell.Item, StringComparer.Ordinal));
    }
}

using System.Globalization;
using System.Text.RegularExpressions;
using EditionRegister.Domain.Reading.Papers;
using EditionRegister.Domain.Reading.Sizes;
using EditionRegister.Domain.Reading.Techniques;

namespace EditionRegister.Domain.Tests.Reading;

/// <summary>The readers against open data of museums, whose sources and licences stand beside it. What is missed is shown by the bench.</summary>
public sealed partial class MuseumSizesTests
{
    private const double Aim = 0.97;
    private const long Near = 25_400 / 16;

    [Fact]
    public void Sizes_are_within_a_sixteenth_of_an_inch_of_the_museums_figures_in_97_of_100_texts()
    {
        var rows = Rows("dimensions_open.tsv").Where(HasFigures).ToList();

        var right = rows.Count(row => Figures(row) is var (first, second) && SizeReader.Read(row[2]).Sizes.Any(size => IsNear(size.Height, first) && IsNear(size.Width, second)));

        Assert.Equal(657, rows.Count);
        Assert.True(right >= Aim * rows.Count, $"{right} of {rows.Count}");
    }

    [Fact]
    public void The_part_that_the_museum_names_has_its_figures()
    {
        var rows = Rows("dimensions_open.tsv").Where(row => HasFigures(row) && row[6].Contains('(', StringComparison.Ordinal)).ToList();

        var right = rows.Count(row => Figures(row) is var (first, second)
            && SizeReader.Read(row[2]).Sizes.Any(size => row[6].EndsWith($"({size.Named})", StringComparison.OrdinalIgnoreCase) && IsNear(size.Height, first) && IsNear(size.Width, second)));

        Assert.True(right >= Aim * rows.Count, $"{right} of {rows.Count}");
    }

    /// <summary>The museum measured in both systems; where its figures differ, the inches are read as they are written all the same.</summary>
    [Fact]
    public void Inches_are_read_as_they_are_written_and_what_no_ruler_has_is_refused()
    {
        var rows = Rows("dimension_fractions.tsv").Select(row => (Text: row[2], Said: Inches(row[2]), Read: SizeReader.Read($"{row[2]} {row[3]}"))).ToList();

        Assert.Equal(500, rows.Count);
        Assert.All(rows.Where(row => row.Said is not null), row => Assert.Equal(row.Said, row.Read.Sizes is [var one] ? one.Height : null));
        Assert.All(rows.Where(row => row.Said is null), row => Assert.True(row.Read is { Sizes.Count: 0, WhyNot: not null }, row.Text));
        Assert.Equal(10, rows.Count(row => row.Said is null));
    }

    [Fact]
    public void Where_the_museums_two_figures_say_the_same_so_does_the_reader()
    {
        var rows = Rows("dimension_fractions.tsv").Select(row => (Said: Inches(row[2]), Metric: (long)(decimal.Parse(row[4], CultureInfo.InvariantCulture) * (row[5] == "cm" ? 10_000 : 25_400)), Read: SizeReader.Read($"{row[2]} {row[3]}"))).Where(row => IsNear(row.Said, row.Metric)).ToList();

        Assert.Equal(454, rows.Count);
        Assert.All(rows, row => Assert.True(IsNear(row.Read.Sizes[0].Height, row.Metric)));
    }

    [Fact]
    public void Supports_of_prints_have_a_name_and_read_again_as_the_same()
    {
        var supports = Rows("mediums.tsv").Select(row => TechniqueReader.Read(row[2]).Support).OfType<string>().Distinct(StringComparer.Ordinal).ToList();

        Assert.All(supports, support => Assert.NotNull(PaperReader.Read(support).Name));
        Assert.All(supports, support => Assert.Equal(PaperReader.Read(support).Write(), PaperReader.Read(PaperReader.Read(support).Write()).Write()));
    }

    private static List<string[]> Rows(string name) =>
        [.. File.ReadAllLines(Path.Combine(Clone.Folder, "tests", "data", name)).Skip(1).Where(line => line.Length > 0).Select(line => line.Split('\t'))];

    private static bool HasFigures(string[] row) => new[] { row[3], row[4] }.All(figure => decimal.TryParse(figure, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out _));

    // One museum's "width" is the first number of its texts, as the README of the data says; the others name their own.
    private static (long First, long Second) Figures(string[] row)
    {
        var scale = row[6].StartsWith("cm", StringComparison.Ordinal) ? 10_000 : 1_000;
        var (width, height) = ((long)(decimal.Parse(row[3], CultureInfo.InvariantCulture) * scale), (long)(decimal.Parse(row[4], CultureInfo.InvariantCulture) * scale));

        return row[0] == "tate" ? (width, height) : (height, width);
    }

    private static bool IsNear(long? one, long other) => one is { } length && Math.Abs(length - other) <= Near;

    /// <summary>Micrometres, worked out without the reader.</summary>
    private static long? Inches(string text)
    {
        if (Written().Match(text) is not { Success: true } match)
        {
            return null;
        }

        var (whole, above, below) = (Number(match, 1, 0), Number(match, 2, 0), Number(match, 3, 1));

        return above >= below ? null : (long)Math.Round((whole + (above / below)) * 25_400, MidpointRounding.AwayFromZero);
    }

    private static decimal Number(Match match, int group, decimal otherwise) => match.Groups[group].Success ? decimal.Parse(match.Groups[group].Value, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture) : otherwise;

    [GeneratedRegex(@"^\s*(?:([0-9]+(?:\.[0-9]+)?)(?:\s+|$))?(?:([0-9]+)/(2|4|8|16|32|64))?\s*$", RegexOptions.CultureInvariant)]
    private static partial Regex Written();
}

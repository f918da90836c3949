using System.Globalization;
using EditionRegister.Domain.Reading.Dates;

namespace EditionRegister.Domain.Tests.Reading.Dates;

/// <summary>The dates of museums in <c>tests/data/dates_open.tsv</c>, whose licences stand beside them.</summary>
internal static class MuseumDates
{
    private static readonly string[][] Rows =
        [.. File.ReadLines(Path.Combine(Clone.Folder, "tests", "data", "dates_open.tsv")).Skip(1).Where(line => line.Length > 0).Select(line => line.Split('\t'))];

    public static IEnumerable<string> Texts => Rows.Select(row => row[2]);

    /// <summary>Those with the museum's own years; a year nought, 0..0, says that it has none.</summary>
    public static IReadOnlyList<(string Text, YearSpan Museum)> WithYears { get; } =
        [.. Rows.Select(row => (Text: row[2], Museum: new YearSpan(Year(row[3]), Year(row[4])))).Where(row => row.Museum is { Earliest: not null, Latest: not null } and not { Earliest: 0, Latest: 0 })];

    private static int? Year(string text) => int.TryParse(text, NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var year) ? year : null;
}

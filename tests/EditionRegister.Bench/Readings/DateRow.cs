using System.Globalization;
using EditionRegister.Domain.Reading.Dates;

namespace EditionRegister.Bench.Readings;

/// <summary>A museum's text of a date with the years its cataloguers gave, and what is read of it.</summary>
internal sealed record DateRow(string Text, int From, int To, string OtherReadings, ReadDate? Read)
{
    /// <summary>Null where the museum has no years; a museum's year nought means none too.</summary>
    public static DateRow? Of(TableFile table, string[] row) =>
        Year(table[row, "earliest"]) is { } from && Year(table[row, "latest"]) is { } to && (from, to) != (0, 0)
            ? new DateRow(table[row, "text"], from, to, table[row, "other_readings"], DateReader.Read(table[row, "text"]))
            : null;

    /// <summary>Whether a museum says with 0..0 that it knows no year.</summary>
    public static bool IsWithoutYear(TableFile table, string[] row) => (Year(table[row, "earliest"]), Year(table[row, "latest"])) == (0, 0);

    public YearSpan? Main => Read is { } read ? new YearSpan(read.Earliest, read.Latest) : null;

    public YearSpan? Whole => Read?.Whole;

    public bool IsEqual(YearSpan? years) => years is { Earliest: { } earliest, Latest: { } latest } && (earliest, latest) == (From, To);

    public bool Overlaps(YearSpan? years) => years is { Earliest: { } earliest, Latest: { } latest } && earliest <= To && latest >= From;

    /// <summary>The same text is read so by this or another museum.</summary>
    public bool IsEqualToAny => IsEqual(Main) || IsEqual(Whole) || Others.Any(other => other == (Main?.Earliest, Main?.Latest) || other == (Whole?.Earliest, Whole?.Latest));

    public int Excess => Main is { Earliest: { } earliest, Latest: { } latest } ? Math.Max(0, latest - earliest - (To - From)) : 0;

    /// <summary>Why the years differ, as far as the form of the text tells.</summary>
    public string Cause => From > To ? "the museum's years run backwards"
        : Read is null ? "not read"
        : Read.Others.Count > 0 ? "another event, counted otherwise"
        : Read.Edtf is not { } edtf ? "other"
        : edtf.Contains("..", StringComparison.Ordinal) ? "open end of another width"
        : Text.Contains("century", StringComparison.OrdinalIgnoreCase) || edtf.Contains('X', StringComparison.Ordinal) || IsPart(edtf) ? "century or decade, or a part of one"
        : edtf.AsSpan().ContainsAny("~%") ? edtf.Contains('/', StringComparison.Ordinal) ? "c. before a span, widened" : "c. of another width"
        : edtf.Contains('?', StringComparison.Ordinal) ? "a doubted year, widened"
        : Text.All(c => char.IsAsciiDigit(c) || c is '-' or '–' or ' ') ? "plain years: the museum's own slip or knowledge"
        : "other";

    private IEnumerable<(int?, int?)> Others =>
        OtherReadings.Split(';', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries)
            .Select(reading => reading.Split(' ')[^1].Split(".."))
            .Select(years => (Year(years[0]), Year(years[^1])));

    // Early, mid and late are read as a span of years that are about.
    private bool IsPart(string edtf) => edtf.Contains("~/", StringComparison.Ordinal) && Text.Split(' ', '-').Any(word => word.TrimEnd('.').ToLowerInvariant() is "early" or "mid" or "late" or "half" or "quarter");

    private static int? Year(string text) => int.TryParse(text, NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var year) ? year : null;
}

using System.Globalization;
using EditionRegister.Domain.Dates;

namespace EditionRegister.Domain.Tests.Dates;

public class RecordedDateTests(string culture = "") : InCulture(culture)
{
    // The other reader is the framework's own.
    [Theory]
    [InlineData("2026-03-01")]
    [InlineData("0001-01-01")]
    [InlineData("9999-12-31")]
    [InlineData("2024-02-29")]
    [InlineData("2023-02-29")]
    [InlineData("1900-02-29")]
    [InlineData("2026-04-31")]
    [InlineData("2026-00-01")]
    [InlineData("2026-13-01")]
    [InlineData("2026-01-00")]
    [InlineData("0000-01-01")]
    [InlineData("2026-3-01")]
    [InlineData("2026-03-1 ")]
    [InlineData(" 2026-03-01")]
    [InlineData("2026/03/01")]
    [InlineData("-026-03-01")]
    [InlineData("2026-03-01T")]
    [InlineData("٢٠٢٦-03-01")]
    [InlineData("")]
    [InlineData(null)]
    public void A_bound_is_a_day_where_the_framework_reads_one(string? text)
    {
        DateOnly? due = DateOnly.TryParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var day) ? day : null;

        var date = new RecordedDate("as written", text, text);

        Assert.Equal(due, date.Earliest);
        Assert.Equal(due, date.Latest);
    }
}

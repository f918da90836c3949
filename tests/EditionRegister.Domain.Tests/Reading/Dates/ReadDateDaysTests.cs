using EditionRegister.Domain.Dates;
using EditionRegister.Domain.Reading.Dates;

namespace EditionRegister.Domain.Tests.Reading.Dates;

/// <summary>The days a register keeps of a date that was read: the calendar's, and the seasons' of <c>Season</c>.</summary>
public sealed class ReadDateDaysTests
{
    [Theory]
    [InlineData("17 February 1877", "1877-02-17", "1877-02-17")]
    [InlineData("October 1962", "1962-10-01", "1962-10-31")]
    [InlineData("February 2024", "2024-02-01", "2024-02-29")]
    [InlineData("spring 2024", "2024-03-01", "2024-05-31")]
    [InlineData("winter 1994", "1994-12-01", "1995-02-28")]
    [InlineData("1926", "1926-01-01", "1926-12-31")]
    [InlineData("c. 1926", "1921-01-01", "1931-12-31")]
    [InlineData("c. AD 3", null, "0008-12-31")]
    [InlineData("1785–90", "1785-01-01", "1790-12-31")]
    [InlineData("19th century", "1800-01-01", "1899-12-31")]
    [InlineData("May 22 and September 5, 1999", "1999-05-22", "1999-09-05")]
    [InlineData("before 1645", null, "1645-12-31")]
    [InlineData("after 1645", "1645-01-01", null)]
    [InlineData("50 BC-100 AD", null, "0100-12-31")]
    [InlineData("n.d.", null, null)]
    [InlineData("9999-24", "9999-12-01", null)]
    public void The_first_and_last_day(string text, string? earliest, string? latest)
    {
        var read = DateReader.Read(text)!;

        Assert.Equal((Day(earliest), Day(latest)), (read.EarliestDay, read.LatestDay));
    }

    [Fact]
    public void The_register_keeps_the_text_as_written_with_the_days()
    {
        var kept = DateReader.Read("c. 1926, printed 1977")!.Recorded("c. 1926, printed 1977");

        Assert.Equal(new RecordedDate("c. 1926, printed 1977", "1921-01-01", "1931-12-31"), kept);
    }

    private static DateOnly? Day(string? text) => text is null ? null : DateOnly.ParseExact(text, "yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture);
}

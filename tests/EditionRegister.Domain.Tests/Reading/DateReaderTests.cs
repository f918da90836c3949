using EditionRegister.Domain.Reading.Dates;

namespace EditionRegister.Domain.Tests.Reading;

/// <summary>Dates in free text, by the table of <see cref="DateConventions"/>; years before and behind worked out by hand from it.</summary>
public sealed class DateReaderTests
{
    [Theory]
    [InlineData("c. 1926", "1926~", 1921, 1931)]
    [InlineData("1785–90", "1785/1790", 1785, 1790)]
    [InlineData("1990-9", "1990/1999", 1990, 1999)]
    [InlineData("1960s", "196X", 1960, 1969)]
    [InlineData("early 20th century", "1900~/1949~", 1900, 1949)]
    [InlineData("late 1860s", "1865~/1869~", 1865, 1869)]
    [InlineData("19th century", "18XX", 1800, 1899)]
    [InlineData("first half of the 18th century", "1700~/1749~", 1700, 1749)]
    [InlineData("spring 2024", "2024-21", 2024, 2024)]
    [InlineData("17 February 1877", "1877-02-17", 1877, 1877)]
    [InlineData("3/13/1929", "1929-03-13", 1929, 1929)]
    [InlineData("9/10/2005", "2005", 2005, 2005)]
    [InlineData("between 1875 and 1878", "1875/1878", 1875, 1878)]
    [InlineData("before 1645", "../1645", 1620, 1645)]
    [InlineData("1971 (?)", "1971?", 1971, 1971)]
    [InlineData("1985-06", "1985-06", 1985, 1985)]
    [InlineData("50 BC-100 AD", "-0049/0100", -50, 100)]
    public void Free_text_becomes_a_date_with_its_earliest_and_latest(string text, string edtf, int earliest, int latest)
    {
        var read = DateReader.Read(text)!;

        Assert.Equal((edtf, earliest, latest), (read.Edtf, read.Earliest, read.Latest));
    }

    [Theory]
    [InlineData("published 1893, printed later", 1893, "published")]
    [InlineData("1935, printed 1977", 1935, "printed")]
    [InlineData("1965 (printed later)", 1965, "printed")]
    public void A_later_printing_stands_beside_the_date(string text, int year, string word)
    {
        var read = DateReader.Read(text)!;

        Assert.Equal((year, word), (read.Earliest, read.Printed!.Word));
    }

    [Theory]
    [InlineData("n.d.")]
    [InlineData("undated")]
    [InlineData("no date")]
    [InlineData("s.d.")]
    public void No_date_is_said_and_no_year_guessed(string text)
    {
        var read = DateReader.Read(text)!;

        Assert.True(read.IsUndated);
        Assert.Null(read.Earliest);
    }

    [Theory]
    [InlineData("")]
    [InlineData("Meiji period")]
    [InlineData("05/11")]
    public void What_is_no_date_is_not_read(string text)
    {
        Assert.Null(DateReader.Read(text));
    }
}

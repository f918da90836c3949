using EditionRegister.Domain.Reading.Dates;

namespace EditionRegister.Domain.Tests.Reading.Dates;

/// <summary>A text that is EDTF already. Source: Library of Congress, Extended Date/Time Format, 4 February 2019, levels 0 and 1, www.loc.gov/standards/datetime.</summary>
public class DateReaderEdtfTests(string culture = "") : InCulture(culture)
{
    [Theory]
    [InlineData("1985-04-12")]
    [InlineData("1985-04")]
    [InlineData("1985")]
    [InlineData("1964/2008")]
    [InlineData("2004-06/2006-08")]
    [InlineData("2004-02-01/2005-02-08")]
    [InlineData("2004-02-01/2005-02")]
    [InlineData("0000")]
    [InlineData("-0002")]
    [InlineData("9999")]
    [InlineData("2016?")]
    [InlineData("2016~")]
    [InlineData("2016%")]
    [InlineData("2016-05~")]
    [InlineData("2016-05-03%")]
    [InlineData("2016-05-XX")]
    [InlineData("2016-XX")]
    [InlineData("XXXX")]
    [InlineData("19XX")]
    [InlineData("198X")]
    [InlineData("XXXX-XX")]
    [InlineData("Y170002")]
    [InlineData("Y-170002")]
    [InlineData("2001-21")]
    [InlineData("2001-22")]
    [InlineData("2001-23")]
    [InlineData("2001-24")]
    [InlineData("1980?/1994~")]
    [InlineData("../2016")]
    [InlineData("../..")]
    [InlineData("/")]
    public void What_the_specification_accepts_is_read_and_stays_as_it_is_written(string text)
    {
        Assert.Equal(text, DateReader.Read(text)?.Edtf);
    }

    // What of a refused text is a date to people is read with a doubt, and never as the form that was refused.
    [Theory]
    [InlineData("20050924T100000", null)]
    [InlineData("12345", null)]
    [InlineData("-0000", null)]
    [InlineData("2016-13", "2016")]
    [InlineData("2016-00", "2016")]
    [InlineData("2016-02-30", "2016-02")]
    [InlineData("2016-04-31", "2016-04")]
    [InlineData("2016-05-32", "2016-05")]
    [InlineData("Y9999", null)]
    [InlineData("Y00001", null)]
    [InlineData("2016-13-XX", "2016")]
    public void What_the_specification_refuses_is_not_read_as_EDTF(string text, string? edtf)
    {
        var read = DateReader.Read(text);

        Assert.Equal((edtf, edtf is not null), (read?.Edtf, read?.Doubt is not null));
    }

    // 34 is a quarter of a year at level 2, which is not read; to a cataloguer it is the end of a span.
    [Fact]
    public void A_quarter_of_level_2_is_no_quarter_here()
    {
        Assert.Equal("2016/2034", DateReader.Read("2016-34")?.Edtf);
    }

    // By the table: about widens a year that stands alone, a doubt does not, and a span has its own width.
    [Theory]
    [InlineData("1926~", 1921, 1931)]
    [InlineData("1926%", 1921, 1931)]
    [InlineData("1926?", 1926, 1926)]
    [InlineData("1926-05~", 1926, 1926)]
    [InlineData("192X~", 1920, 1929)]
    [InlineData("1835~/1842~", 1835, 1842)]
    [InlineData("../1645", 1620, 1645)]
    [InlineData("1645/..", 1645, 1670)]
    [InlineData("-0049", -50, -50)]
    [InlineData("0000", -1, -1)]
    [InlineData("00XX", 1, 99)]
    [InlineData("000X", 1, 9)]
    [InlineData("1994-24", 1994, 1995)]
    public void Its_years_follow_the_same_table_as_free_text(string text, int earliest, int latest)
    {
        var read = DateReader.Read(text)!;

        Assert.Equal((earliest, latest), (read.Earliest, read.Latest));
    }
}

public sealed class DateReaderEdtfInTurkishTests() : DateReaderEdtfTests("tr-TR");

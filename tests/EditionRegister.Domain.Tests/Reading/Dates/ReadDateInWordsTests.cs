using EditionRegister.Domain.Reading.Dates;

namespace EditionRegister.Domain.Tests.Reading.Dates;

/// <summary>What a person is told of a date that is being typed.</summary>
public class ReadDateInWordsTests(string culture = "") : InCulture(culture)
{
    [Theory]
    [InlineData("c. 1926", "about 1926: 1921 to 1931")]
    [InlineData("c. 1926?", "possibly about 1926: 1921 to 1931")]
    [InlineData("1971?", "possibly 1971")]
    [InlineData("spring 2024", "spring 2024: March to May 2024")]
    [InlineData("Winter 1994", "winter 1994: December 1994 to February 1995")]
    [InlineData("2026-03-01", "1 March 2026")]
    [InlineData("October 1962", "October 1962")]
    [InlineData("2026", "2026")]
    [InlineData("1785–90", "1785 to 1790")]
    [InlineData("1776–c.1790", "1776 to about 1790")]
    [InlineData("June 10-12, 1954", "10 to 12 June 1954")]
    [InlineData("April 24–May 16, 1868", "24 April to 16 May 1868")]
    [InlineData("July - August 1966", "July to August 1966")]
    [InlineData("December 1945 - January 1946", "December 1945 to January 1946")]
    [InlineData("fall–winter 1991", "autumn to winter 1991")]
    [InlineData("1960s", "the 1960s: 1960 to 1969")]
    [InlineData("21st century", "the 21st century: 2000 to 2099")]
    [InlineData("11th century", "the 11th century: 1000 to 1099")]
    [InlineData("early 20th century", "about 1900 to 1950")]
    [InlineData("50 BC-100 AD", "50 BC to AD 100")]
    [InlineData("before 1645", "1645 or earlier")]
    [InlineData("after c. 1830", "about 1830 or later")]
    [InlineData("../..", "open at both ends")]
    [InlineData("Y170002", "Y170002")]
    [InlineData("n.d.", "no date")]
    [InlineData("n.d., printed 1975", "no date; printed 1975")]
    public void A_date_is_told_in_plain_words(string text, string words)
    {
        Assert.Equal(words, ReadDateInWords.Of(DateReader.Read(text)!, text));
    }

    [Theory]
    [InlineData("9/10/2005", "9/10/2005: the year 2005; which is the month is not sure")]
    [InlineData("28 Jan 86", "28 Jan 86: possibly 28 January 1986; the century is not written")]
    [InlineData(" 12-Jul-43 ", "12-Jul-43: possibly 12 July 1943; the century is not written")]
    [InlineData("May 76, printed 1980", "May 76, printed 1980: possibly May 1976; the century is not written; printed 1980")]
    [InlineData("mid 80's", "mid 80's: possibly about 1982 to 1987; the century is not written")]
    [InlineData("1904-05", "1904-05: May 1904; the years 1904 to 1905 are written the same")]
    [InlineData("2016-02-30", "2016-02-30: February 2016; there is no such day")]
    [InlineData("2016-13", "2016-13: the year 2016; what stands behind it is not read")]
    [InlineData("1800s", "1800s: the 19th century, 1800 to 1899; the decade may be meant")]
    public void What_is_not_sure_is_said_with_what_was_taken(string text, string words)
    {
        Assert.Equal(words, ReadDateInWords.Of(DateReader.Read(text)!, text));
    }

    [Fact]
    public void Many_dates_beside_are_counted_and_long_texts_not_said_again()
    {
        const string Text = "9/10/2005, printed 2006; cast 2007; published 2008; signed 2009; restored 2010; exhibited 2011; copyright 2012";

        Assert.Equal(
            "the year 2005; which is the month is not sure; printed 2006; cast 2007; published 2008; signed 2009; restored 2010; and 2 more",
            ReadDateInWords.Of(DateReader.Read(Text)!, Text));
    }

    [Theory]
    [InlineData("05/94", "A year in two figures is not read; write all four.")]
    [InlineData("1.3.26", "A year in two figures is not read; write all four.")]
    [InlineData("'94", "A year in two figures is not read; write all four.")]
    [InlineData("A.H. 1065", "A year of another era is not read; write the year of ours beside it.")]
    [InlineData("Showa 12", "A year of another era is not read; write the year of ours beside it.")]
    [InlineData("June 5–6", "A day or a month without a year is not read.")]
    [InlineData("Meiji period", null)]
    [InlineData("1926", null)]
    [InlineData("", null)]
    public void Why_a_text_was_not_read_is_said_where_it_can_be_known(string text, string? why)
    {
        Assert.Equal(why, DateUnread.Why(text));
    }
}

public sealed class ReadDateInWordsInGermanTests() : ReadDateInWordsTests("de-DE");

public sealed class ReadDateInWordsInTurkishTests() : ReadDateInWordsTests("tr-TR");

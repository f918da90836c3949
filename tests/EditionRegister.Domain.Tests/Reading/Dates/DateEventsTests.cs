using EditionRegister.Domain.Reading.Dates;

namespace EditionRegister.Domain.Tests.Reading.Dates;

/// <summary>Texts that date more than one thing: the image, what was made of it, and what it was made after. Common practice, no source.</summary>
public sealed class DateEventsTests
{
    [Theory]
    [InlineData("1934, printed 1936", "1934; printed 1936", 1934, 1936)]
    [InlineData("1965 (printed later)", "1965; printed later", 1965, 1965)]
    [InlineData("published 1893, printed later", "published 1893; printed later", 1893, 1893)]
    [InlineData("negative 1950; printed 1981", "negative 1950; printed 1981", 1950, 1981)]
    [InlineData("printed 1981, negative 1950", "negative 1950; printed 1981", 1950, 1981)]
    [InlineData("designed 1925, manufactured ca. 1927-28", "designed 1925; manufactured about 1927 to 1928", 1925, 1928)]
    [InlineData("conceived 1881, cast 1919", "conceived 1881; cast 1919", 1881, 1919)]
    [InlineData("1903; reprinted 1978", "1903; reprinted 1978", 1903, 1978)]
    [InlineData("1827, published May 7, 1856", "1827; published 7 May 1856", 1827, 1856)]
    [InlineData("1905, printed posthumously", "1905; printed posthumously", 1905, 1905)]
    [InlineData("?1910–11, posthumous cast", "possibly 1910 to 1911; cast posthumously", 1910, 1911)]
    [InlineData("1848 (designed 1847)", "1848; designed 1847", 1847, 1848)]
    [InlineData("c. 1967 (designed) 1968 (manufactured)", "designed about 1967: 1962 to 1972; manufactured 1968", 1962, 1972)]
    [InlineData("1880 block, c. 1935 print", "block 1880; printed about 1935: 1930 to 1940", 1880, 1940)]
    [InlineData("1850 (date of publication)", "published 1850", 1850, 1850)]
    [InlineData("exhibited 1809, 1840", "exhibited 1809 to 1840", 1809, 1840)]
    [InlineData("1828, reprinted 1831 or later", "1828; reprinted 1831 or later", 1828, 1856)]
    [InlineData("designed 1939, manufactured before 1962", "designed 1939; manufactured 1962 or earlier", 1939, 1962)]
    [InlineData("exhibition copy 2007 (original 1993)", "original 1993; copy 2007", 1993, 2007)]
    [InlineData("2000, project date: 1996", "2000; project 1996", 1996, 2000)]
    [InlineData("1975 (1952)", "1975; in brackets 1952", 1952, 1975)]
    public void The_date_of_the_image_comes_first_and_the_rest_beside_it(string text, string words, int earliest, int latest)
    {
        var read = DateReader.Read(text)!;

        Assert.Equal(words, ReadDateInWords.Of(read, text));
        Assert.Equal(new YearSpan(earliest, latest), read.Whole);
    }

    [Theory]
    [InlineData("1982 (after 1802 design)", "1982; design 1802")]
    [InlineData("1977 cast after an 1853 original", "cast 1977; original 1853")]
    [InlineData("c. 1865 print from c. 1860 negative", "printed about 1865: 1860 to 1870; negative about 1860: 1855 to 1865")]
    [InlineData("1763, after a drawing of 1732", "1763; drawing 1732")]
    [InlineData("Replica of 1836 original", "no date of its own; original 1836")]
    [InlineData("Undated cast after 1838-39 original", "no date; original 1838 to 1839")]
    [InlineData("modeled c. 1910-1915, cast after 1917", "modelled about 1910 to 1915; cast 1917 or later")]
    public void The_date_of_an_original_is_not_the_date_of_what_was_made_after_it(string text, string words)
    {
        Assert.Equal(words, ReadDateInWords.Of(DateReader.Read(text)!, text));
    }

    [Theory]
    [InlineData("19th century in the style of 16th century", "the 19th century: 1800 to 1899")]
    [InlineData("c. 1747 with later 18th century mount", "about 1747: 1742 to 1752")]
    [InlineData("1653 (dated in the third state)", "1653")]
    public void The_date_of_another_thing_is_left_out(string text, string words)
    {
        Assert.Equal(words, ReadDateInWords.Of(DateReader.Read(text)!, text));
    }

    [Fact]
    public void What_is_said_beside_the_date_has_its_own_word_form_and_years()
    {
        var read = DateReader.Read("negative 1950, printed c. 1981")!;

        Assert.Equal(("negative", "1950", 1950, 1950), (read.Word, read.Edtf, read.Earliest, read.Latest));
        Assert.Equal([new DatedEvent("printed", "1981~", 1976, 1986, When: null)], read.Others);
    }
}

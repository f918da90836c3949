using EditionRegister.Domain.Reading.Dates;

namespace EditionRegister.Domain.Tests.Reading.Dates;

/// <summary>Dates in free text, by the table of <see cref="DateConventions"/>; years before and behind worked out by hand from it. The examples are common practice.</summary>
public class DateReaderTests(string culture = "") : InCulture(culture)
{
    [Theory]
    [InlineData("c. 1926", "1926~", 1921, 1931)]
    [InlineData("c1926", "1926~", 1921, 1931)]
    [InlineData("CA .1926", "1926~", 1921, 1931)]
    [InlineData("c. 1926?", "1926%", 1921, 1931)]
    [InlineData("?1829", "1829?", 1829, 1829)]
    [InlineData("possibly1845", "1845?", 1845, 1845)]
    [InlineData("1971 (?)", "1971?", 1971, 1971)]
    [InlineData("1868 (probably)", "1868?", 1868, 1868)]
    [InlineData("1950 ± 5", "1945/1955", 1945, 1955)]
    [InlineData("50 BC", "-0049", -50, -50)]
    [InlineData("c. 2 BC", "-0001~", -7, 4)]
    [InlineData("A.D. 70", "0070", 70, 70)]
    [InlineData("c. 140 CE", "0140~", 135, 145)]
    [InlineData("607", "0607", 607, 607)]
    [InlineData("MDCCLXXXV", "1785", 1785, 1785)]
    [InlineData("[19]26", "1926", 1926, 1926)]
    [InlineData("192[6?]", "1926?", 1926, 1926)]
    [InlineData("dated A.H. 1065 (AD 1654-1655)", "1654/1655", 1654, 1655)]
    public void A_year_is_read_with_what_hedges_it(string text, string edtf, int earliest, int latest)
    {
        Is(text, edtf, earliest, latest);
    }

    [Theory]
    [InlineData("1785–90", "1785/1790", 1785, 1790)]
    [InlineData("1990-9", "1990/1999", 1990, 1999)]
    [InlineData("1831 or 2", "1831/1832", 1831, 1832)]
    [InlineData("c. 1973/74", "1973~/1974~", 1973, 1974)]
    [InlineData("c. 1835-1842", "1835~/1842~", 1835, 1842)]
    [InlineData("c. 1835-c. 1842", "1835~/1842~", 1835, 1842)]
    [InlineData("1776–c.1790", "1776/1790~", 1776, 1790)]
    [InlineData("c. 1926 -1940", "1926~/1940~", 1926, 1940)]
    [InlineData("1927–?36", "1927/1936?", 1927, 1936)]
    [InlineData("1885-86?", "1885?/1886?", 1885, 1886)]
    [InlineData("1928–31–1947", "1928/1947", 1928, 1947)]
    [InlineData("1967-1968/2009", "1967/2009", 1967, 2009)]
    [InlineData("1930s-40s", "1930/1949", 1930, 1949)]
    [InlineData("1930-40s", "1930/1949", 1930, 1949)]
    [InlineData("between 1875 and 1878", "1875/1878", 1875, 1878)]
    [InlineData("about 1975, 1976", "1975~/1976", 1975, 1976)]
    [InlineData("1715-1725; c. 1700", "1700~/1725", 1700, 1725)]
    [InlineData("1969, 1969", "1969", 1969, 1969)]
    [InlineData("A. 1930, B. 1949, C. 1973", "1930/1973", 1930, 1973)]
    [InlineData("265-589", "0265/0589", 265, 589)]
    [InlineData("300-900 AD", "0300/0900", 300, 900)]
    [InlineData("1000 -500 BC", "-0999/-0499", -1000, -500)]
    [InlineData("50 BC-100 AD", "-0049/0100", -50, 100)]
    public void A_span_says_by_itself_how_wide_it_is(string text, string edtf, int earliest, int latest)
    {
        Is(text, edtf, earliest, latest);
    }

    [Theory]
    [InlineData("before 1645", "../1645", 1620, 1645)]
    [InlineData("by 1931", "../1931", 1906, 1931)]
    [InlineData("pre-1905", "../1905", 1880, 1905)]
    [InlineData("no later than 1968", "../1968", 1943, 1968)]
    [InlineData("c. 1793 or earlier", "../1793~", 1768, 1793)]
    [InlineData("before 1955-1956", "../1956", 1931, 1956)]
    [InlineData("after c.1830", "1830~/..", 1830, 1855)]
    [InlineData("after 1782?", "1782?/..", 1782, 1807)]
    [InlineData("no earlier than 1888", "1888/..", 1888, 1913)]
    [InlineData("1916 or later", "1916/..", 1916, 1941)]
    [InlineData("1995- present", "1995/..", 1995, 2020)]
    [InlineData("1995-", "1995/..", 1995, 2020)]
    [InlineData("after 1945, before 1957", "1945/1957", 1945, 1957)]
    [InlineData("18th century, after 1713", "1713/1799", 1713, 1799)]
    public void An_open_end_stays_open_in_EDTF_and_has_the_width_of_the_table(string text, string edtf, int earliest, int latest)
    {
        Is(text, edtf, earliest, latest);
    }

    [Theory]
    [InlineData("1960s", "196X", 1960, 1969)]
    [InlineData("1970'S", "197X", 1970, 1979)]
    [InlineData("c. 1920s", "192X~", 1920, 1929)]
    [InlineData("late 1860s", "1865~/1869~", 1865, 1869)]
    [InlineData("mid-1860's", "1862~/1867~", 1862, 1867)]
    [InlineData("late 1730's - early 1740's", "1735~/1745~", 1735, 1745)]
    [InlineData("19th century", "18XX", 1800, 1899)]
    [InlineData("late 15th centruy", "1450~/1499~", 1450, 1499)]
    [InlineData("early 20th century", "1900~/1950~", 1900, 1950)]
    [InlineData("first half of the 18th century", "1700~/1750~", 1700, 1750)]
    [InlineData("20th Century/2ND HALF", "1950~/1999~", 1950, 1999)]
    [InlineData("second quarter of the 16th century?", "1525%/1550%", 1525, 1550)]
    [InlineData("last third of the 18th century", "1766~/1799~", 1766, 1799)]
    [InlineData("mid- to late-19th century", "1825~/1899~", 1825, 1899)]
    [InlineData("late 18th-mid 19th Century", "1750~/1875~", 1750, 1875)]
    [InlineData("second half of the 19th century-early 20th century", "1850~/1950~", 1850, 1950)]
    [InlineData("19th - early 20th century", "1800/1950~", 1800, 1950)]
    [InlineData("14th, 15th and 16th century", "1300/1599", 1300, 1599)]
    [InlineData("1st century", "0001/0099", 1, 99)]
    [InlineData("Late 3rd century BC", "-0249~/-0200~", -250, -201)]
    [InlineData("3rd-1st century B.C", "-0299/0000", -300, -1)]
    [InlineData("4th century BCE- 4th century CE", "-0399/0399", -400, 399)]
    [InlineData("18th c. 1750", "1750~", 1745, 1755)]
    [InlineData("[18--?]", "18XX?", 1800, 1899)]
    [InlineData("Edo period (1603-1867), 18th-19th century", "1700/1867", 1700, 1867)]
    [InlineData("Qing Dynasty (1644-1912), K'ang Hsi Reign (1662-1722)", "1662/1722", 1662, 1722)]
    public void Decades_and_centuries_are_read_with_their_parts(string text, string edtf, int earliest, int latest)
    {
        Is(text, edtf, earliest, latest);
    }

    [Theory]
    [InlineData("17 February 1877", "1877-02-17")]
    [InlineData("February 12, 1876.", "1876-02-12")]
    [InlineData("May 28. 1870", "1870-05-28")]
    [InlineData("Novermber 7, 1874", "1874-11-07")]
    [InlineData("1916, November 28", "1916-11-28")]
    [InlineData("3/13/1929", "1929-03-13")]
    [InlineData("31/12/1999", "1999-12-31")]
    [InlineData("17. 2. 1877", "1877-02-17")]
    [InlineData("1.3.2026", "2026-03-01")]
    [InlineData("2024/03/01", "2024-03-01")]
    [InlineData("10/1917", "1917-10")]
    [InlineData("1932, December", "1932-12")]
    [InlineData("1995 (February)", "1995-02")]
    [InlineData("May, 1894", "1894-05")]
    [InlineData("Sept.-Oct. 1915", "1915-09/1915-10")]
    [InlineData("December - January 1950", "1949-12/1950-01")]
    [InlineData("December 1945 - January 1946", "1945-12/1946-01")]
    [InlineData("June 10-12, 1954", "1954-06-10/1954-06-12")]
    [InlineData("14–17 May 1968", "1968-05-14/1968-05-17")]
    [InlineData("April 24–May 16, 1868", "1868-04-24/1868-05-16")]
    [InlineData("May 22 and September 5, 1999", "1999-05-22/1999-09-05")]
    [InlineData("about March 1926", "1926-03~")]
    [InlineData("spring 2024", "2024-21")]
    [InlineData("fall–winter 1991", "1991-23/1991-24")]
    [InlineData("winter 1994/95", "1994-24")]
    public void Days_months_and_seasons_are_read(string text, string edtf)
    {
        Assert.Equal(edtf, DateReader.Read(text)?.Edtf);
    }

    [Theory]
    [InlineData("")]
    [InlineData("  ")]
    [InlineData(null)]
    [InlineData("Meiji period")]
    [InlineData("late Qing?")]
    [InlineData("not ancient")]
    [InlineData("05/11")]
    [InlineData("3/20/65")]
    [InlineData("Design Patent 191,300")]
    [InlineData("7 x 8 x 15")]
    [InlineData("shelf mark 9876")]
    [InlineData("printed later")]
    public void What_is_no_date_is_not_read(string? text)
    {
        Assert.Null(DateReader.Read(text));
    }

    [Theory]
    [InlineData("n.d.")]
    [InlineData("n.d.a.")]
    [InlineData("s.d.")]
    [InlineData("o. J.")]
    [InlineData("[s.a.]")]
    [InlineData("undated")]
    [InlineData("No date")]
    [InlineData("date unknown")]
    [InlineData("senza data")]
    [InlineData("sin fecha")]
    [InlineData("ohne Jahr")]
    [InlineData("non datato")]
    public void No_date_is_said_and_no_year_guessed(string text)
    {
        var read = DateReader.Read(text)!;

        Assert.True(read.IsUndated);
        Assert.Equal(("XXXX", null, null), (read.Edtf, read.Earliest, read.Latest));
    }

    private static void Is(string text, string edtf, int earliest, int latest)
    {
        var read = DateReader.Read(text)!;

        Assert.Equal((edtf, earliest, latest), (read.Edtf, read.Earliest, read.Latest));
    }
}

public sealed class DateReaderInGermanTests() : DateReaderTests("de-DE");

public sealed class DateReaderInTurkishTests() : DateReaderTests("tr-TR");

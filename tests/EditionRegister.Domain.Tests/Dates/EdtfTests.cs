using CsCheck;
using EditionRegister.Domain.Dates;

namespace EditionRegister.Domain.Tests.Dates;

public class EdtfTests(string culture = "") : InCulture(culture)
{
    // Source: Library of Congress, Extended Date/Time Format (EDTF) Specification, 4 February 2019, www.loc.gov/standards/datetime,
    // and test/parser.js of github.com/inukshuk/edtf.js at 811a00dc. The bounds of February 2016: undate-python, issue 73.
    // The moments (T) are the specification's examples from memory; other bounds are the calendar's.
    [Theory]
    [InlineData("1985-04-12", "1985-04-12..1985-04-12")]
    [InlineData("1985-04", "1985-04-01..1985-04-30")]
    [InlineData("1985", "1985-01-01..1985-12-31")]
    [InlineData("2016-02", "2016-02-01..2016-02-29")]
    [InlineData("1964/2008", "1964-01-01..2008-12-31")]
    [InlineData("2004-06/2006-08", "2004-06-01..2006-08-31")]
    [InlineData("2004-02-01/2005-02-08", "2004-02-01..2005-02-08")]
    [InlineData("2004-02-01/2005-02", "2004-02-01..2005-02-28")]
    [InlineData("0000", "..")]
    [InlineData("-0002", "..")]
    [InlineData("9999", "9999-01-01..9999-12-31")]
    [InlineData("1985-04-12T23:20:30", "1985-04-12..1985-04-12")]
    [InlineData("1985-04-12T23:20:30Z", "1985-04-12..1985-04-12")]
    [InlineData("1985-04-12T23:20:30-04", "1985-04-12..1985-04-12")]
    [InlineData("1985-04-12T23:20:30+04:30", "1985-04-12..1985-04-12")]
    public void Level_0_is_read_with_its_bounds(string text, string bounds)
    {
        Assert.True(Edtf.TryParse(text, out var date));

        Assert.Equal(bounds, Bounds(date));
        Assert.Equal(text, date.Text);
    }

    // Source: as above; 1985-XX-XX, -1985 and the intervals open at one end from memory of the same page. ?, ~ and % leave the bounds as they are.
    [Theory]
    [InlineData("2016?", "2016-01-01..2016-12-31")]
    [InlineData("2016~", "2016-01-01..2016-12-31")]
    [InlineData("2016%", "2016-01-01..2016-12-31")]
    [InlineData("2016-05~", "2016-05-01..2016-05-31")]
    [InlineData("2016-05-03%", "2016-05-03..2016-05-03")]
    [InlineData("2016-05-XX", "2016-05-01..2016-05-31")]
    [InlineData("2016-XX", "2016-01-01..2016-12-31")]
    [InlineData("1985-XX-XX", "1985-01-01..1985-12-31")]
    [InlineData("XXXX", "..")]
    [InlineData("19XX", "1900-01-01..1999-12-31")]
    [InlineData("198X", "1980-01-01..1989-12-31")]
    [InlineData("XXXX-XX", "..")]
    [InlineData("Y170002", "..")]
    [InlineData("Y-170002", "..")]
    [InlineData("1980?/1994~", "1980-01-01..1994-12-31")]
    [InlineData("../2016", "..2016-12-31")]
    [InlineData("2016/..", "2016-01-01..")]
    [InlineData("1985-04-12/", "1985-04-12..")]
    [InlineData("/1985-04-12", "..1985-04-12")]
    [InlineData("../..", "..")]
    [InlineData("/", "..")]
    [InlineData("-1985", "..")]
    public void Level_1_is_read_with_its_bounds(string text, string bounds)
    {
        Assert.True(Edtf.TryParse(text, out var date));

        Assert.Equal(bounds, Bounds(date));
    }

    // That 21 to 24 are spring to winter: as above. Which months they are: common practice, no source.
    [Theory]
    [InlineData("2001-21", "2001-03-01..2001-05-31")]
    [InlineData("2001-22", "2001-06-01..2001-08-31")]
    [InlineData("2001-23", "2001-09-01..2001-11-30")]
    [InlineData("2001-24", "2001-12-01..2002-02-28")]
    [InlineData("2003-24", "2003-12-01..2004-02-29")]
    [InlineData("9999-24", "9999-12-01..")]
    [InlineData("2024-21~", "2024-03-01..2024-05-31")]
    public void A_season_is_three_months_of_the_north(string text, string bounds)
    {
        Assert.True(Edtf.TryParse(text, out var date));

        Assert.Equal(bounds, Bounds(date));
    }

    // Source: as above.
    [Theory]
    [InlineData("20050924T100000")]
    [InlineData("12345")]
    [InlineData("-0000")]
    [InlineData("2016-13")]
    [InlineData("2016-00")]
    [InlineData("2016-02-30")]
    [InlineData("2016-04-31")]
    [InlineData("2016-05-32")]
    [InlineData("Y9999")]
    [InlineData("Y00001")]
    [InlineData("2016-13-XX")]
    public void What_the_specification_refuses_is_not_read(string text)
    {
        Assert.False(Edtf.TryParse(text, out var date));
        Assert.Null(date);
    }

    // Forms of the draft of 2012 that the specification of 2019 replaced (u, unknown, open, ?~, y), and of level 2.
    [Theory]
    [InlineData("199u")]
    [InlineData("unknown/2006")]
    [InlineData("2004-01-01/open")]
    [InlineData("2004-06?~")]
    [InlineData("y170002")]
    [InlineData("156X-12-25")]
    [InlineData("2004?-06-11")]
    [InlineData("2016-34")]
    [InlineData("[1667,1668]")]
    [InlineData("1950S2")]
    public void Superseded_forms_and_level_2_are_not_read(string text)
    {
        Assert.False(Edtf.TryParse(text, out _));
    }

    [Theory]
    [InlineData(null)]
    [InlineData("")]
    [InlineData("1.3.2026")]
    [InlineData("3/20/65")]
    [InlineData("1985/1986/1987")]
    [InlineData("2016-05-00")]
    [InlineData("2016-21-01")]
    [InlineData("2016-XX-05")]
    [InlineData("2015-02-29")]
    [InlineData("1900-02-29")]
    [InlineData("2008/1964")]
    [InlineData("1985-04-12T24:20:30")]
    [InlineData("1985\n")]
    [InlineData("١٩٨٥")]
    [InlineData("spring 2024")]
    public void What_is_no_date_is_not_read(string? text)
    {
        Assert.False(Edtf.TryParse(text, out _));
    }

    [Fact]
    public void Two_dates_are_the_same_when_they_are_written_the_same()
    {
        Assert.True(Edtf.TryParse("2016", out var year));
        Assert.True(Edtf.TryParse(" 2016 ", out var spaced));
        Assert.True(Edtf.TryParse("2016-XX", out var unspecified));

        Assert.Equal(year, spaced);
        Assert.NotEqual(year, unspecified);
        Assert.Equal(year.Span, unspecified.Span);
    }

    [Fact]
    public void Every_day_there_is_has_itself_as_both_bounds()
    {
        Gen.DateOnly.Sample(day => Edtf.TryParse(day.ToString("yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture), out var date)
            && date.Span == new DateSpan(day, day));
    }

    [Fact]
    public void Whatever_is_read_begins_before_it_ends()
    {
        Gen.String[Gen.Char["0123456789-/X?~%.YTZ:"], 0, 12].Sample(
            text => !Edtf.TryParse(text, out var date) || !(date.Earliest > date.Latest),
            iter: 20_000);
    }

    [Fact]
    public void The_form_shown_is_made_of_dates_that_are_read()
    {
        var examples = System.Text.RegularExpressions.Regex.Replace(Edtf.Form, @" \([a-z]+\)", "").Split([", ", " or "], StringSplitOptions.None);

        Assert.All(examples, example => Assert.True(Edtf.TryParse(example, out _), example));
        Assert.Equal(7, examples.Length);
    }

    private static string Bounds(Edtf date) => $"{Iso(date.Earliest)}..{Iso(date.Latest)}";

    private static string Iso(DateOnly? day) => day?.ToString("yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture) ?? "";
}

public sealed class EdtfInGermanTests() : EdtfTests("de-DE");

public sealed class EdtfInTurkishTests() : EdtfTests("tr-TR");

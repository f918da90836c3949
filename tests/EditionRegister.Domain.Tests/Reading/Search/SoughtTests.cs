using CsCheck;
using EditionRegister.Domain.Numbers;
using EditionRegister.Domain.Reading.Search;
using EditionRegister.Domain.Works;

namespace EditionRegister.Domain.Tests.Reading.Search;

/// <summary>What somebody types to find sheets. Marks as the readers of pencils and inscriptions know them; years by <see cref="Domain.Reading.Dates.DateConventions"/>.</summary>
public class SoughtTests(string culture = "") : InCulture(culture)
{
    private static readonly string[] Bits =
    [
        "A/P", "AP", "2", "II/V", "3/12", "c.", "2019", "1960s", "spring", "before", "and", "to", "etching", "tolland", "H.C.", "C", "%", "\uD800", "no.", "-", "of", "the", "century", "19th",
    ];

    [Theory]
    [InlineData("A/P 2", "artists-proof", 2, null, null, "artist's proof 2")]
    [InlineData("AP 2", "artists-proof", 2, null, null, "artist's proof 2")]
    [InlineData("ap 2", "artists-proof", 2, null, null, "artist's proof 2")]
    [InlineData("E.A. 3", "artists-proof", 3, null, null, "artist's proof 3")]
    [InlineData("A/P no. 2", "artists-proof", 2, null, null, "artist's proof 2")]
    [InlineData("A/P 2/5", "artists-proof", 2, 5, "arabic", "artist's proof 2 of 5")]
    [InlineData("2/5 A/P", "artists-proof", 2, 5, "arabic", "artist's proof 2 of 5")]
    [InlineData("A/P II/V", "artists-proof", 2, 5, "roman", "artist's proof II of V")]
    [InlineData("AP II/V", "artists-proof", 2, 5, "roman", "artist's proof II of V")]
    [InlineData("ap ii/v", "artists-proof", 2, 5, "roman", "artist's proof II of V")]
    [InlineData("épreuve d'artiste II/V", "artists-proof", 2, 5, "roman", "artist's proof II of V")]
    [InlineData("artist's proof 2", "artists-proof", 2, null, null, "artist's proof 2")]
    [InlineData("3/12", "numbered", 3, 12, "arabic", "number 3 of 12")]
    [InlineData("3⁄12", "numbered", 3, 12, "arabic", "number 3 of 12")]
    [InlineData("3 / 12", "numbered", 3, 12, "arabic", "number 3 of 12")]
    [InlineData("no. 3/12", "numbered", 3, 12, "arabic", "number 3 of 12")]
    [InlineData("edition 3/12", "numbered", 3, 12, "arabic", "number 3 of 12")]
    [InlineData("II/V", "numbered", 2, 5, "roman", "number II of V")]
    [InlineData("H.C. C", "hors-commerce", 3, null, "letters", "hors commerce C")]
    [InlineData("B.A.T.", "bon-a-tirer", null, null, null, "bon à tirer")]
    [InlineData("BAT", "bon-a-tirer", null, null, null, "bon à tirer")]
    [InlineData("trial proof 4", "trial", 4, null, null, "trial proof 4")]
    [InlineData("W/P 2", "W/P", 2, null, null, "W/P 2")]
    public void A_mark_or_a_fraction_is_a_number(string text, string series, int? number, int? of, string? notation, string meaning)
    {
        var part = Assert.Single(Sought.Read(text).Parts);

        Assert.Equal((series, number, of, notation), (part.Number!.Series, part.Number.Number, part.Number.Of, part.Number.Notation?.Word));
        Assert.Equal((meaning, text), (part.Meaning, part.Written));
    }

    [Theory]
    [InlineData("c. 2019", "2014-01-01", "2024-12-31", "2014 to 2024")]
    [InlineData("c.2019", "2014-01-01", "2024-12-31", "2014 to 2024")]
    [InlineData("about 1926", "1921-01-01", "1931-12-31", "1921 to 1931")]
    [InlineData("1960s", "1960-01-01", "1969-12-31", "1960 to 1969")]
    [InlineData("in the 1960s", "1960-01-01", "1969-12-31", "1960 to 1969")]
    [InlineData("201X", "2010-01-01", "2019-12-31", "2010 to 2019")]
    [InlineData("2019", "2019-01-01", "2019-12-31", "the year 2019")]
    [InlineData("2019-2021", "2019-01-01", "2021-12-31", "2019 to 2021")]
    [InlineData("2019 to 2021", "2019-01-01", "2021-12-31", "2019 to 2021")]
    [InlineData("from 2019 to 2021", "2019-01-01", "2021-12-31", "2019 to 2021")]
    [InlineData("between 1926 and 1930", "1926-01-01", "1930-12-31", "1926 to 1930")]
    [InlineData("2024/2025", "2024-01-01", "2025-12-31", "2024 to 2025")]
    [InlineData("2024-03", "2024-03-01", "2024-03-31", "March 2024")]
    [InlineData("March 2024", "2024-03-01", "2024-03-31", "March 2024")]
    [InlineData("2024-03-05", "2024-03-05", "2024-03-05", "2024-03-05")]
    [InlineData("5 März 2024", "2024-03-05", "2024-03-05", "2024-03-05")]
    [InlineData("9/10/2005", "2005-01-01", "2005-12-31", "the year 2005")]
    [InlineData("spring 2024", "2024-03-01", "2024-05-31", "March 2024 to May 2024")]
    [InlineData("19th century", "1800-01-01", "1899-12-31", "1800 to 1899")]
    [InlineData("first half of the 18th century", "1700-01-01", "1750-12-31", "1700 to 1750")]
    [InlineData("before 1950", null, "1950-12-31", "up to 1950")]
    [InlineData("after 1950", "1950-01-01", null, "1950 or later")]
    public void Years_and_words_of_dates_are_a_span_of_days(string text, string? earliest, string? latest, string meaning)
    {
        var part = Assert.Single(Sought.Read(text).Parts);

        Assert.Equal((Day(earliest), Day(latest)), (part.Dates!.Earliest, part.Dates.Latest));
        Assert.Equal(meaning, part.Meaning);
    }

    [Theory]
    [InlineData("etching", "etching")]
    [InlineData("Radierung", "etching")]
    [InlineData("eau-forte", "etching")]
    [InlineData("LINOLSCHNITT", "linocut")]
    [InlineData("soft ground etching", "soft-ground-etching")]
    [InlineData("screen print", "screenprint")]
    [InlineData("etching and aquatint", "etching aquatint")]
    public void Techniques_are_read_in_any_of_their_words(string text, string techniques)
    {
        var part = Assert.Single(Sought.Read(text).Parts);

        Assert.Equal(techniques.Split(' '), part.Techniques.Select(technique => technique.Word));
        Assert.StartsWith("the technique", part.Meaning, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("2")]
    [InlineData("12")]
    [InlineData("0012")]
    [InlineData("IV")]
    [InlineData("C")]
    [InlineData("13/12")]
    [InlineData("0/12")]
    [InlineData("M/L")]
    [InlineData("bat")]
    [InlineData("ap")]
    [InlineData("Bat")]
    [InlineData("SP")]
    [InlineData("proof")]
    [InlineData("print")]
    [InlineData("B2019")]
    [InlineData("2019a")]
    [InlineData("img-2019")]
    [InlineData("#2019")]
    [InlineData("undated")]
    [InlineData("n.d.")]
    [InlineData("spring")]
    [InlineData("may")]
    [InlineData("before")]
    [InlineData("circa")]
    [InlineData("-1950")]
    [InlineData("7KQ4-M2X3")]
    [InlineData("harbour")]
    [InlineData("%")]
    [InlineData("/")]
    public void What_says_nothing_more_stays_a_word(string text)
    {
        var part = Assert.Single(Sought.Read(text).Parts);

        Assert.Equal((text, false, ""), (part.Written, part.IsRead, part.Meaning));
        Assert.Equal([text], part.Words);
    }

    [Theory]
    [InlineData("linocut 2024 tolland", "linocut=the technique linocut | 2024=the year 2024 | tolland")]
    [InlineData("tolland A/P 2 spring 2024", "tolland | A/P 2=artist's proof 2 | spring 2024=March 2024 to May 2024")]
    [InlineData("harbour at low water", "harbour | at | low | water")]
    [InlineData("drawer 2", "drawer | 2")]
    [InlineData("drawer 2 A/P", "drawer | 2 | A/P=artist's proof")]
    [InlineData("A/P 2019", "A/P=artist's proof | 2019=the year 2019")]
    [InlineData("A/P tolland 2/5", "A/P=artist's proof | tolland | 2/5=number 2 of 5")]
    [InlineData("2/12 state II", "2/12=number 2 of 12 | state | II")]
    [InlineData("2019 2021", "2019=the year 2019 | 2021=the year 2021")]
    [InlineData("before 1950 after 1930", "before 1950=up to 1950 | after 1930=1930 or later")]
    [InlineData("1926, printed 2019", "1926,=the year 1926 | printed 2019=the year 2019")]
    [InlineData("a linocut", "a | linocut=the technique linocut")]
    [InlineData("etching on copper", "etching=the technique etching | on | copper")]
    [InlineData("10/1917", "10/1917=October 1917")]
    [InlineData("3 of 12", "3 | of | 12")]
    [InlineData("  ", "")]
    [InlineData(null, "")]
    public void The_longest_run_that_means_something_goes_first_and_the_rest_are_words(string? text, string parts)
    {
        var sought = Sought.Read(text);

        Assert.Equal(parts, string.Join(" | ", sought.Parts.Select(Shown)));
    }

    [Theory]
    [InlineData("A/P 2", "A/P 2")]
    [InlineData("AP II/V", "AP II/V")]
    [InlineData("spring 2024", "spring|2024")]
    [InlineData("etching and aquatint", "etching|and|aquatint")]
    public void What_was_read_may_be_meant_as_it_stands(string text, string words)
    {
        var part = Assert.Single(Sought.Read(text).Parts);

        Assert.Equal(words, string.Join('|', part.Words));
    }

    [Fact]
    public void Marks_of_the_registers_own_are_understood()
    {
        var museum = NumberingKind.Own("museum-proof", "M.P.", "museum proof", inSize: false, inTotal: true, forSale: false);
        var specimen = NumberingKind.Own("specimen", "specimen", "specimen copy", inSize: false, inTotal: true, forSale: false);
        OwnWords own = new([museum, specimen], []);

        var sought = Sought.Read("M.P. II/III specimen", own);

        Assert.Equal("M.P. II/III=museum proof II of III | specimen=specimen copy", string.Join(" | ", sought.Parts.Select(Shown)));
        Assert.Equal((museum, specimen), (sought.Parts[0].Number!.Kind, sought.Parts[1].Number!.Kind));
        Assert.DoesNotContain(Sought.Read("specimen").Parts, part => part.IsRead);
    }

    [Theory]
    [InlineData("A/P|2", "A/P 2=artist's proof 2")]
    [InlineData("c.|2019", "c. 2019=2014 to 2024")]
    [InlineData("drawer 2|tolland", "drawer 2 | tolland")]
    [InlineData("drawer 2|A/P", "drawer 2 | A/P=artist's proof")]
    [InlineData("rain street 3/12", "rain street | 3/12=number 3 of 12")]
    [InlineData("3/12 rain street", "3/12=number 3 of 12 | rain street")]
    [InlineData("drawer c.|2019", "drawer c. | 2019=the year 2019")]
    [InlineData("", "")]
    public void Texts_typed_apart_stay_as_they_stand_where_nothing_is_read_in_them(string texts, string parts)
    {
        var sought = Sought.Read(texts.Split('|'));

        Assert.Equal(parts, string.Join(" | ", sought.Parts.Select(Shown)));
    }

    [Fact]
    public void A_whole_code_typed_alone_is_that_code()
    {
        var whole = Sought.Read(["7kq4 m2x3"]);

        Assert.Equal("7KQ4M2X3", whole.Code);
        Assert.Empty(whole.Parts);
        Assert.Null(Sought.Read(["7kq4-m2x3", "harbour"]).Code);
    }

    [Fact]
    public void Whatever_is_typed_none_of_it_is_lost()
    {
        Gen.Int[0, Bits.Length - 1].Select(at => Bits[at]).Array[0, 9].Sample(words => Rejoined(string.Join(' ', words)) == string.Join(' ', words));
        Gen.String.Sample(text => Rejoined(text) == string.Join(' ', text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries)));
    }

    [Fact]
    public void Endless_texts_are_words()
    {
        string[] endless =
        [
            string.Join(' ', Enumerable.Repeat("c. 2019 A/P 2", 2_000)), new string('9', 20_000), new string('/', 20_000), "1" + new string('/', 29), string.Concat(Enumerable.Repeat("A.", 15)),
            string.Join(' ', Enumerable.Repeat("between 1926 and", 8)), string.Join(' ', Enumerable.Repeat("1/1/1/1/1/1/1/1/1/1/1/1/1", 24)),
        ];

        foreach (var text in endless)
        {
            Assert.Equal(text, Rejoined(text));
        }

        Assert.DoesNotContain(Sought.Read(endless[0]).Parts, part => part.IsRead);
    }

    private static string Rejoined(string text) => string.Join(' ', Sought.Read(text).Parts.Select(part => part.Written));

    private static string Shown(SoughtPart part) => part.IsRead ? $"{part.Written}={part.Meaning}" : part.Written;

    private static DateOnly? Day(string? iso) => iso is null ? null : DateOnly.Parse(iso, System.Globalization.CultureInfo.InvariantCulture);
}

public sealed class SoughtInTurkishTests() : SoughtTests("tr-TR");

public sealed class SoughtInGermanTests() : SoughtTests("de-DE");

using EditionRegister.Domain.Facts;
using EditionRegister.Domain.Reading.Search;
using EditionRegister.Store.Lists;
using EditionRegister.Store.Logbook;

namespace EditionRegister.Store.Tests.Lists;

/// <summary>Numbers, dates and techniques as somebody types them, against two works known by heart: SmallStudio's Harbour, and a Weir whose sheets say more than the register does.</summary>
public sealed class SoughtSheetsTests : IDisposable
{
    private readonly TempRegister _register = new();

    public SoughtSheetsTests()
    {
        SmallStudio.Furnish(_register.Store);
        _register.Store.Write("furnish", AddWeir);
    }

    public void Dispose() => _register.Dispose();

    [Theory]
    [InlineData("1/3", "1")]
    [InlineData("2/3", "")]
    [InlineData("1/4", "")]
    [InlineData("A/P 2", "10 12")]
    [InlineData("ap ii", "10")]
    [InlineData("A/P II/V", "10")]
    [InlineData("A/P 2/5", "")]
    [InlineData("A/P II/VI", "")]
    [InlineData("A/P", "10 12")]
    [InlineData("artist's proof 2", "10 12")]
    [InlineData("B.A.T.", "11")]
    [InlineData("7/30", "11")]
    [InlineData("P/P 3", "13")]
    [InlineData("H.C. C", "14")]
    [InlineData("H.C. 3", "14")]
    [InlineData("W/P 2", "13")]
    [InlineData("3/12", "15")]
    [InlineData("5/50", "16")]
    public void A_number_is_found_as_given_as_pencilled_and_as_inscribed(string text, string ids)
    {
        Assert.Equal(ids, Found(text));
    }

    [Theory]
    [InlineData("2025", "1 2 3 4")]
    [InlineData("c. 2025", "1 2 3 4")]
    [InlineData("c. 1926", "10 11 12 13 14 15 16")]
    [InlineData("1930", "10 11 12 13 14 15 16")]
    [InlineData("1932", "")]
    [InlineData("before 1950", "10 11 12 13 14 15 16")]
    [InlineData("after 1950", "1 2 3 4 10 11 12 13 14 15 16")]
    [InlineData("1971", "10 11 12 13 14")]
    [InlineData("spring 1980", "14 15 16")]
    [InlineData("1981", "")]
    [InlineData("1990s", "16")]
    [InlineData("1971 1930", "10 11 12 13 14")]
    public void A_date_is_found_by_the_work_the_run_and_the_declaring(string text, string ids)
    {
        Assert.Equal(ids, Found(text));
    }

    [Theory]
    [InlineData("linocut", "1 2 3 4")]
    [InlineData("etching", "10 11 12 13 14 15 16")]
    [InlineData("eau-forte", "10 11 12 13 14 15 16")]
    [InlineData("etching and drypoint", "10 11 12 13 14 15 16")]
    [InlineData("etching and linocut", "")]
    [InlineData("woodcut", "")]
    [InlineData("Linolschnitt 2025 tolland", "1 2 3 4")]
    public void A_technique_is_found_in_whatever_words_it_was_written(string text, string ids)
    {
        Assert.Equal(ids, Found(text));
    }

    [Theory]
    [InlineData("15/16", "20")]
    [InlineData("winter 1999", "20")]
    [InlineData("studio 1999", "")]
    [InlineData("A/P 2 weir", "10 12")]
    public void What_is_read_is_also_found_as_it_stands(string text, string ids)
    {
        _register.Store.Write("furnish", writing =>
        {
            var work = writing.On(Root.Work(3));
            work.Set("work", 3, ("title", "15/16, Winter 1999"), ("title_state", "given"), ("maker_state", "unknown"));
            Sheet(work, 20, 4, "7KQ4M2XL");
            work.Set("print_run", 4, ("work", 3), ("ordinal", 1), ("purpose", "edition"));

            return true;
        });

        Assert.Equal(ids, Found(text));
    }

    [Theory]
    [InlineData(1, "A/P 2", "14")]
    [InlineData(1, "2/12", "2")]
    [InlineData(1, "B.A.T.", "31")]
    [InlineData(1, "progressive proof 3", "19")]
    [InlineData(1, "Linolschnitt", "1 2 3 4 5 6 7 8 9 10 11 12 13 14 15 16 17 18 19 20")]
    [InlineData(1, "March 2025 harbour", "")]
    [InlineData(1, "March 2026 gull 3/8", "23")]
    [InlineData(2, "2/13", "2")]
    [InlineData(2, "2/12", "2")]
    [InlineData(3, "A/P 2", "14")]
    [InlineData(3, "2/13", "2")]
    [InlineData(3, "c. 1930", "50")]
    [InlineData(3, "1932", "")]
    [InlineData(3, "1920s Holzschnitt 7/30", "50")]
    public void Registers_of_older_forms_are_searched_by_what_they_have(int form, string text, string ids)
    {
        using TempFolder folder = new();
        RegisterFolder older = new(folder.Path);
        File.Copy(Logbook.LogbookFixture.Path($"register-000{form}.db"), older.Database);

        Assert.Equal(ids, Found(text, new RegisterStore(older, _register.Surroundings)));
    }

    [Fact]
    public void The_sheets_of_a_search_are_counted_and_paged()
    {
        var page = _register.Store.Read(reader => ImpressionList.Piled(reader, new ImpressionFilter { Sought = Sought.Read("etching") }, 2, 3));

        Assert.Equal([12, 13, 14], page.Page.Select(place => place.Impression));
        Assert.Equal((7, 11), (page.Found, page.All));
    }

    private string Found(string text) => Found(text, _register.Store);

    private static string Found(string text, RegisterStore store) =>
        string.Join(' ', store.Read(reader => ImpressionList.Piled(reader, new ImpressionFilter { Sought = Sought.Read(text, reader.OwnWords) }, 0, 100)).Page.Select(place => place.Impression));

    /// <summary>
    /// An etching with drypoint of about 1926, written Radierung und Kaltnadel. Run 2 is of 1971: sheet 10 is A/P II of V by the register; 11 bears 7/30 and an
    /// inscription that calls it the bon à tirer; 12 bears A/P 2 and was recorded before pencils were read; 13 was read as P/P 3, and its back says working proof 2.
    /// Run 3 is of the spring of 1980, recorded as written: sheet 14 is H.C. C, of the edition declared in 1971; 15 bears 3/12; 16 is 5 of about 50, of an edition declared in the nineties.
    /// </summary>
    private static bool AddWeir(Writing writing)
    {
        var work = writing.On(Root.Work(2));
        work.Set("work", 2,
            ("title", "Weir"), ("title_state", "given"), ("maker_state", "unknown"), ("technique", "Radierung und Kaltnadel"), ("year", "c. 1926"), ("year_earliest", "1921-01-01"), ("year_latest", "1931-12-31"));
        work.Set("print_run", 2, ("work", 2), ("ordinal", 1), ("purpose", "edition"), ("printed", "1971"), ("printed_earliest", "1971-01-01"), ("printed_latest", "1971-12-31"));
        work.Set("print_run", 3, ("work", 2), ("ordinal", 2), ("purpose", "restrike"), ("printed", "April 1980"));
        Edition(work, 3, ("declared", (FactValue)"1971"));
        Edition(work, 4, ("declared", "1990/1995"), ("declared_earliest", "1990-01-01"), ("declared_latest", "1995-12-31"));
        Numbering(work, 4, 3, 1, "artists-proof", "roman", ("size", 5), ("size_state", "stated"));
        Numbering(work, 5, 3, 2, "hors-commerce", "letters", ("size", 4), ("size_state", "stated"));
        Numbering(work, 6, 4, 1, "numbered", "arabic", ("size_state", "unknown"), ("hedge", "about"), ("hedged_size", 50));

        foreach (var (id, code) in new[] { (10L, "7KQ4M2XB"), (11L, "7KQ4M2XC"), (12L, "7KQ4M2XD"), (13L, "7KQ4M2XE") })
        {
            Sheet(work, id, 2, code);
        }

        foreach (var (id, code) in new[] { (14L, "7KQ4M2XF"), (15L, "7KQ4M2XG"), (16L, "7KQ4M2XH") })
        {
            Sheet(work, id, 3, code);
        }

        Given(work, 10, 4, 2);
        Given(work, 14, 5, 3);
        Given(work, 16, 6, 5);
        work.Set("impression", 11, ("pencilled", "Nr. 7 / 30"), ("pencil_kind", "numbered"), ("pencil_series", "edition"), ("pencil_number", 7), ("pencil_size", 30), ("pencil_notation", "arabic"));
        work.Set("impression", 12, ("pencilled", "A/P 2"));
        work.Set("impression", 13, ("pencilled", "printer's proof, 3"), ("pencil_kind", "proof"), ("pencil_series", "P/P"), ("pencil_number", 3), ("pencil_notation", "arabic"));
        work.Set("impression", 15, ("pencilled", "3⁄12"));
        Inscription(work, 2, 11, ("says_kind", "proof"), ("says_series", "B.A.T."));
        Inscription(work, 3, 13, ("says_kind", "proof"), ("says_series", "W/P"), ("says_number", 2), ("says_notation", "arabic"));

        return true;
    }

    private static void Edition(Deed work, long id, params (string, FactValue)[] declared) =>
        work.Set("edition", id, [("work", 2), ("ordinal", id), ("kind", "limited"), ("extent", "whole"), ("closed", "no"), .. declared]);

    private static void Numbering(Deed work, long id, long edition, int ordinal, string kind, string notation, params (string, FactValue)[] size) =>
        work.Set("numbering", id, [("edition", edition), ("ordinal", ordinal), ("kind", kind), ("notation", notation), .. size]);

    private static void Sheet(Deed work, long id, long run, string code)
    {
        work.Set("code", id, ("code", code), ("sheet", id));
        work.Set("impression", id, ("run", run), ("ordinal", id), ("code", code), ("standing", "kept"), ("signed", "no"), ("for_sale", "no"));
    }

    private static void Given(Deed work, long sheet, long numbering, int number)
    {
        work.Set("number", (numbering * 100) + number, ("numbering", numbering), ("ordinal", number), ("fate", "open"));
        work.Set("impression", sheet, ("numbering", numbering), ("number", number));
    }

    private static void Inscription(Deed work, long id, long sheet, params (string, FactValue)[] says) =>
        work.Set("inscription", id, [("impression", sheet), ("ordinal", 1), ("side", "back"), ("manner", "written"), ("text", "as it stands"), .. says]);
}

using EditionRegister.Domain.Facts;
using EditionRegister.Store.Lists;

namespace EditionRegister.Store.Tests.Lists;

public sealed class ImpressionListTests : IDisposable
{
    private readonly TempRegister _register = new();

    public ImpressionListTests()
    {
        SmallStudio.Furnish(_register.Store);
        AddLighthouse();
    }

    public void Dispose() => _register.Dispose();

    [Fact]
    public void A_line_says_everything_about_a_sheet()
    {
        var line = Find(new ImpressionFilter { Text = "7kq4-m2x3" }).Single();

        // The code of the example is no code by its check character, so it is found as the beginning of one.
        Assert.Equal(
            new ImpressionLine(1, "7KQ4M2X3", 1, "Harbour", "given", "Mira Tolland", "linocut", "2025", "kept", "numbered", "arabic", 1, "1/3", 3, null, 2, null),
            line);
    }

    [Fact]
    public void Sheets_come_by_maker_title_kind_number_and_code_and_those_without_come_last()
    {
        Set("impression", 4, ("numbering", 2), ("number", 1));
        Set("impression", 2, ("numbering", 1), ("number", 2));

        var ids = Find(new ImpressionFilter()).Select(line => line.Id);

        // Lighthouse is by Ada Brook; Harbour by Mira Tolland: 1/3, 2/3, the artist's proof, the sheet without a number.
        Assert.Equal([5, 1, 2, 4, 3], ids);
    }

    [Fact]
    public void Pages_join_without_a_gap()
    {
        var whole = Find(new ImpressionFilter());

        var pages = Enumerable.Range(0, 4).SelectMany(page => ImpressionList.Find(_register.Store, new ImpressionFilter(), page * 2, 2));

        Assert.Equal(whole, pages);
        Assert.Equal(5, ImpressionList.Count(_register.Store, new ImpressionFilter()));
    }

    [Theory]
    [InlineData("harb", "1 2 3 4")]
    [InlineData("TOLLAND", "1 2 3 4")]
    [InlineData("brook harbour", "")]
    [InlineData("brook light", "5")]
    [InlineData("5b", "5")]
    [InlineData("drawer", "5")]
    [InlineData("plan chest", "5")]
    [InlineData("studio", "5")]
    [InlineData("7kq4m", "1 2 3 4 5")]
    [InlineData("7KQ4-M2X5", "3")]
    [InlineData("M2X5", "3")]
    [InlineData("q4-m2x5", "3")]
    [InlineData("untitled", "")]
    [InlineData("100%", "5")]
    [InlineData("0%_", "5")]
    [InlineData("%", "5")]
    [InlineData("_", "5")]
    [InlineData("\\", "")]
    [InlineData("  ", "1 2 3 4 5")]
    public void Words_are_found_in_title_maker_class_place_and_code(string text, string ids)
    {
        var found = Find(new ImpressionFilter { Text = text }).Select(line => line.Id).Order();

        Assert.Equal(ids, string.Join(' ', found));
    }

    [Fact]
    public void Filters_narrow_and_combine()
    {
        Assert.Equal([5], Ids(new ImpressionFilter { MakerIds = [3] }));
        Assert.Equal([1, 2, 3, 4], Ids(new ImpressionFilter { WorkId = 1 }));
        Assert.Equal([1], Ids(new ImpressionFilter { EditionId = 1 }));
        Assert.Equal([1, 2, 5], Ids(new ImpressionFilter { Standing = "kept" }));
        Assert.Equal([2], Ids(new ImpressionFilter { WorkId = 1, Standing = "kept", Text = "7KQ4M2X4" }));
    }

    [Fact]
    public void A_place_holds_what_lies_in_places_inside_it_by_now()
    {
        // Sheet 1 lay in the plan chest (2) until it went to the gallery; sheet 5 lies in drawer 3 of it.
        Assert.Equal([5], Ids(new ImpressionFilter { PlaceId = 1 }));
        Assert.Equal([5], Ids(new ImpressionFilter { PlaceId = 3 }));
    }

    [Fact]
    public void A_title_that_is_not_known_and_a_maker_nobody_knows_come_last()
    {
        Set("work", 1, ("title", FactValue.Null), ("title_state", "unknown"));
        Unset("work_role", 1);

        var lines = Find(new ImpressionFilter());

        Assert.Equal([5, 1, 2, 3, 4], lines.Select(line => line.Id));
        Assert.Equal((null, "unknown", null), (lines[1].Title, lines[1].TitleState, lines[1].Makers));
    }

    [Fact]
    public void An_erased_maker_is_shown_as_erased()
    {
        _register.Store.Write("erase", writing =>
        {
            writing.On(Root.Person(3)).Set("person", 3, ("erased", "yes"));
            writing.On(Root.Person(3)).Erase("person", 3);

            return true;
        });

        Assert.Equal("(erased)", Find(new ImpressionFilter { WorkId = 2 }).Single().Makers);
        Assert.Empty(Find(new ImpressionFilter { Text = "brook" }));
    }

    private IReadOnlyList<ImpressionLine> Find(ImpressionFilter filter) => ImpressionList.Find(_register.Store, filter, 0, 100);

    private IEnumerable<long> Ids(ImpressionFilter filter) => Find(filter).Select(line => line.Id).Order();

    private void Set(string table, long id, params (string Fact, FactValue Value)[] facts) => _register.Store.Write("set", writing =>
    {
        writing.On(Root.Work(1)).Set(table, id, facts);

        return true;
    });

    private void Unset(string table, long id) => _register.Store.Write("unset", writing =>
    {
        writing.On(Root.Work(1)).Unset(table, id);

        return true;
    });

    /// <summary>A pupil's print, in drawer 3 of the plan chest in the studio, with a title that has LIKE's own signs in it.</summary>
    private void AddLighthouse() => _register.Store.Write("furnish", writing =>
    {
        writing.On(Root.Person(3)).Set(
            "person", 3, ("what", "person"), ("name", "Ada Brook"), ("protected", "yes"), ("public_name", "initials"), ("class_code", "5b"), ("erased", "no"));
        writing.On(Root.Place(3)).Set("place", 3, ("name", "drawer 3"), ("inside", 2));
        var work = writing.On(Root.Work(2));
        work.Set("work", 2, ("title", "Lighthouse, 100%_"), ("title_state", "given"), ("maker_state", "named"));
        work.Set("work_role", 2, ("work", 2), ("person", 3), ("role", "maker"), ("ordinal", 1));
        work.Set("print_run", 2, ("work", 2), ("ordinal", 1), ("purpose", "edition"));
        work.Set("code", 5, ("code", "7KQ4M2X7"), ("sheet", 5));
        work.Set("impression", 5, ("run", 2), ("ordinal", 1), ("code", "7KQ4M2X7"), ("standing", "kept"), ("signed", "no"), ("for_sale", "no"));
        work.Set("whereabouts", 3, ("impression", 5), ("ordinal", 1), ("kind", "pulled"), ("to_state", "placed"), ("to_place", 3));

        return true;
    });
}

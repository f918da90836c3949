using EditionRegister.Domain.Facts;
using EditionRegister.Domain.Reading.Search;
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
    public void Pages_join_without_a_gap()
    {
        var pages = Enumerable.Range(0, 4).Select(page => _register.Store.Read(reader => ImpressionList.Piled(reader, new ImpressionFilter(), page * 2, 2))).ToList();

        Assert.Equal([1, 2, 3, 4, 5], pages.SelectMany(page => page.Page).Select(place => place.Impression));
        Assert.All(pages, page => Assert.Equal((5, 5), (page.Found, page.All)));
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
    [InlineData("lino", "1 2 3 4")]
    [InlineData("202", "1 2 3 4")]
    [InlineData("li", "5")]
    [InlineData("untitled", "")]
    [InlineData("100%", "5")]
    [InlineData("0%_", "5")]
    [InlineData("%", "5")]
    [InlineData("_", "5")]
    [InlineData("\\", "")]
    [InlineData("  ", "1 2 3 4 5")]
    public void Words_are_found_in_title_maker_class_place_code_year_and_technique(string text, string ids)
    {
        var found = Ids(new ImpressionFilter { Sought = Sought.Read(text.Split(' ', StringSplitOptions.RemoveEmptyEntries)) });

        Assert.Equal(ids, string.Join(' ', found));
    }

    [Fact]
    public void Filters_narrow_and_combine()
    {
        Assert.Equal([5], Ids(new ImpressionFilter { MakerIds = [3] }));
        Assert.Equal([1, 2, 3, 4], Ids(new ImpressionFilter { WorkId = 1 }));
        Assert.Equal([1], Ids(new ImpressionFilter { EditionId = 1 }));
        Assert.Equal([1, 2, 5], Ids(new ImpressionFilter { Standing = "kept" }));
        Assert.Equal([2], Ids(new ImpressionFilter { WorkId = 1, Standing = "kept", Sought = Sought.Read(["7KQ4M2X4"]) }));
    }

    [Fact]
    public void A_place_holds_what_lies_in_places_inside_it_by_now()
    {
        // Sheet 1 lay in the plan chest (2) until it went to the gallery; sheet 5 lies in drawer 3 of it.
        Assert.Equal([5], Ids(new ImpressionFilter { PlaceId = 1 }));
        Assert.Equal([5], Ids(new ImpressionFilter { PlaceId = 3 }));
    }

    [Fact]
    public void An_erased_maker_is_found_by_name_no_more()
    {
        _register.Store.Write("erase", writing =>
        {
            writing.On(Root.Person(3)).Set("person", 3, ("erased", "yes"));
            writing.On(Root.Person(3)).Erase("person", 3);

            return true;
        });

        Assert.Empty(Ids(new ImpressionFilter { Sought = Sought.Read("brook") }));
    }

    private IEnumerable<long> Ids(ImpressionFilter filter) =>
        _register.Store.Read(reader => ImpressionList.Piled(reader, filter, 0, 100)).Page.Select(place => place.Impression);

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

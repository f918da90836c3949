using EditionRegister.UseCases.Choosing;
using static EditionRegister.Tui.Tests.Sheets.OnSheets;

namespace EditionRegister.Tui.Tests.Sheets;

/// <summary>Giving sheets into consignment, and taking them back.</summary>
public sealed class ConsignAndReturnTests
{
    [Fact]
    public async Task Sheets_are_consigned_on_terms_and_it_is_said()
    {
        await using var house = await TestHouse.OnDemoAsync();
        await house.PressOnAsync(Harbour("9-10"), "c");

        await house.FillAsync(("To whom", "quay"), ("Until", "2027-09"), ("Their share", "33.33"), ("Note", "spring hang"));

        Assert.Equal("2 sheets consigned to Quay Gallery, 2027-03-01, until 2027-09, their share 33.33 %.", house.Message);
        Assert.Equal("with Quay Gallery", house.WhereIs(Harbour("9-10")));
        Assert.Equal(("spring hang", 3_333), (house.Sheet(Harbour("9")).Whereabouts[^1].Note, house.Sheet(Harbour("9")).Whereabouts[^1].Rate));
    }

    [Fact]
    public async Task A_gallery_new_to_the_address_book_is_recorded_in_the_same_go()
    {
        await using var house = await TestHouse.OnDemoAsync();
        await house.PressOnAsync(Harbour("9"), "c");

        await house.FillAsync(("To whom", "Tidewater Rooms"), ("They are", "new organisation"));

        Assert.Equal("Tidewater Rooms is in the address book, as person 13. 1 sheet consigned to Tidewater Rooms, 2027-03-01.", house.Message);
        Assert.True(house.Register.LookAround.Book().People[13].IsOrganisation);
        Assert.Equal("with Tidewater Rooms", house.WhereIs(Harbour("9")));
    }

    [Theory]
    [InlineData("To whom", "", "To whom is needed: a gallery, a shop, a friend who sells: Quay Gallery.")]
    [InlineData("To whom", "Nobody Known", "Nobody called “Nobody Known” is in the address book. Nothing was changed. Record them first with `edreg person add`, or name them by their number.")]
    [InlineData("Their share", "140", "“140” is no share: write per cent from 0 to 100, such as 40 or 33.33.")]
    [InlineData("Until", "when sold", "“when sold” is no date that can be read: ")]
    public async Task What_is_not_right_is_said_and_nothing_is_consigned(string field, string typed, string problem)
    {
        await using var house = await TestHouse.OnDemoAsync();
        await house.PressOnAsync(Harbour("9"), "c");

        await house.FillAsync(("To whom", "Quay Gallery"), (field, typed));

        Assert.StartsWith(problem, house.Form.Problem, StringComparison.Ordinal);
        Assert.Equal("in Studio › Plan chest › Drawer 1", house.WhereIs(Harbour("9")));
    }

    [Fact]
    public async Task What_an_agreement_has_to_say_is_left_to_licensed_advice()
    {
        await using var house = await TestHouse.OnDemoAsync();

        await house.PressOnAsync(Harbour("9"), "c");

        Assert.Equal("What a consignment agreement has to say is decided by local law, which differs from place to place; ask licensed advice where in doubt.", house.Form.Caution);
    }

    [Fact]
    public async Task Consigning_is_undone()
    {
        await using var house = await TestHouse.OnDemoAsync();
        await house.PressOnAsync(Harbour("9"), "c");
        await house.FillAsync(("To whom", "Quay Gallery"));

        await house.PressAsync("u");

        Assert.Equal("1 sheet: last move taken back.", house.Message);
        Assert.Equal("in Studio › Plan chest › Drawer 1", house.WhereIs(Harbour("9")));
    }

    [Fact]
    public async Task Sheets_come_back_from_where_they_are_to_where_they_lay()
    {
        await using var house = await TestHouse.OnDemoAsync();
        await house.PressOnAsync(Harbour("5, 7"), "r");
        var given = (house.Form["From"], house.Form["Place"]);

        await house.FillAsync(("Date", "2027-01-10"));

        Assert.Equal(("Quay Gallery", "Studio › Plan chest › Drawer 1"), given);
        Assert.Equal("2 sheets returned from Quay Gallery and put away in Studio › Plan chest › Drawer 1, 2027-01-10.", house.Message);
        Assert.Equal("in Studio › Plan chest › Drawer 1", house.WhereIs(Harbour("5, 7")));
    }

    [Fact]
    public async Task Sheets_come_back_into_the_makers_hands_and_that_is_undone()
    {
        await using var house = await TestHouse.OnDemoAsync();
        await house.PressOnAsync(Harbour("5"), "r");
        await house.FillAsync(("From", ""), ("Place", ""));
        var (said, where) = (house.Message, house.WhereIs(Harbour("5")));

        await house.PressAsync("u");

        Assert.Equal("1 sheet returned, 2027-03-01.", said);
        Assert.Equal("with Mira Tolland", where);
        Assert.Equal("1 sheet: last move taken back.", house.Message);
        Assert.Equal("with Quay Gallery", house.WhereIs(Harbour("5")));
    }

    [Fact]
    public async Task A_sheet_that_is_here_is_not_asked_about()
    {
        await using var house = await TestHouse.OnDemoAsync();

        await house.PressOnAsync(Harbour("9"), "r");

        Assert.Null(house.House.Asking);
        Assert.Equal($"{house.Sheet(Harbour("9")).ShownCode} is not away: it is in Studio › Plan chest › Drawer 1. Nothing was changed. Only what someone else has can be returned.", house.Message);
    }

    [Fact]
    public async Task One_of_several_that_is_here_is_named()
    {
        await using var house = await TestHouse.OnDemoAsync();
        await house.PressOnAsync(Harbour("5, 9"), "r");

        await house.FillAsync(("From", "Quay Gallery"), ("Place", "Drawer 1"));

        Assert.Equal(
            $"{house.Sheet(Harbour("9")).ShownCode} is not with Quay Gallery, so it cannot come back from there: it is in Studio › Plan chest › Drawer 1. Nothing was changed. Look whether it is another sheet, or record first how it got there.",
            house.Form.Problem);
        Assert.Equal("with Quay Gallery", house.WhereIs(Harbour("5")));
    }

    [Fact]
    public async Task Sheets_that_are_not_there_any_more_are_said_before_anything_is_asked()
    {
        await using var house = await TestHouse.OnDemoAsync();

        await house.PressOnAsync(new ImpressionChoice { Edition = 1, Sheets = "13" }, "c");

        Assert.Null(house.House.Asking);
        Assert.Contains("Nothing was changed.", house.Message, StringComparison.Ordinal);
    }
}

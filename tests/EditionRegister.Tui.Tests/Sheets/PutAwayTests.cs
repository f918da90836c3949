using EditionRegister.Tui.Tests.PlanChest;
using EditionRegister.UseCases.Choosing;
using static EditionRegister.Tui.Tests.Sheets.OnSheets;

namespace EditionRegister.Tui.Tests.Sheets;

/// <summary>Putting sheets away.</summary>
public sealed class PutAwayTests
{
    [Fact]
    public async Task Sheets_are_put_away_and_it_is_said()
    {
        await using var house = await TestHouse.OnDemoAsync();
        await house.PressOnAsync(Harbour("9-10"), "m", "“Harbour at Low Water” 9/12, 10/12");
        var (title, about, day) = (house.Form.Title, house.Form.About, house.Form["Date"]);

        await house.FillAsync(("Place", "drawer 2"), ("Note", "under the blue folder"));

        Assert.Equal("Put away “Harbour at Low Water” 9/12, 10/12", title);
        Assert.Equal(["2 sheets: in Studio › Plan chest › Drawer 1."], about);
        Assert.Equal("2027-03-01", day);
        Assert.Equal("2 sheets put away in Studio › Plan chest › Drawer 2, 2027-03-01.", house.Message);
        Assert.Equal("in Studio › Plan chest › Drawer 2", house.WhereIs(Harbour("9-10")));
        Assert.Equal("under the blue folder", house.Sheet(Harbour("9")).Whereabouts[^1].Note);
    }

    [Fact]
    public async Task A_place_is_suggested_by_a_part_of_its_path()
    {
        await using var house = await TestHouse.OnDemoAsync();
        await house.PressOnAsync(Harbour("9"), "m");

        house.Form.FieldOf("Place").Text = "board";
        house.Form.TakeSuggestion();

        Assert.Equal("Westhaven School › Print room › Display board", house.Form["Place"]);
    }

    [Fact]
    public async Task Putting_away_is_undone_even_where_the_sheets_were_chosen_by_where_they_lay()
    {
        await using var house = await TestHouse.OnDemoAsync();
        await house.PressOnAsync(new ImpressionChoice { LyingIn = "Display board" }, "m");
        await house.FillAsync(("Place", "Drawer 2"));

        await house.PressAsync("u");

        Assert.Equal("8 sheets: last move taken back.", house.Message);
        Assert.Equal(8, house.Register.LookAround.Chosen(new ImpressionChoice { LyingIn = "Display board" }).Sum(chosen => chosen.Sheets.Count));
    }

    [Fact]
    public async Task Undoing_takes_no_step_back_that_another_window_took()
    {
        await using var house = await TestHouse.OnDemoAsync();
        await house.PressOnAsync(Harbour("9"), "m");
        await house.FillAsync(("Place", "Drawer 2"));
        house.Register.Consign.Run(Harbour("9"), "Quay Gallery");
        var code = house.Sheet(Harbour("9")).ShownCode;

        await house.PressAsync("u");

        Assert.Equal($"{code} has gone on since you looked: another step is now the last of that chain. Nothing was changed. `edreg show {code}` shows both of its chains.", house.Message);
        Assert.Equal("with Quay Gallery", house.WhereIs(Harbour("9")));
    }

    [Fact]
    public async Task A_new_place_is_made_when_asked_for()
    {
        await using var house = await TestHouse.OnDemoAsync();
        await house.PressOnAsync(Harbour("9-10"), "m");
        await house.FillAsync(("Place", "Plan chest › Drawer 3 › Folder A"));

        Assert.Equal("There is no place “Plan chest › Drawer 3 › Folder A” yet. Make “Studio › Plan chest › Drawer 3 › Folder A” and put 2 sheets there?", house.Question.Asked);
        await house.PressAsync("y");

        Assert.Equal("Studio › Plan chest › Drawer 3 › Folder A is a place now. 2 sheets put away in Studio › Plan chest › Drawer 3 › Folder A, 2027-03-01.", house.Message);
        Assert.Equal("in Studio › Plan chest › Drawer 3 › Folder A", house.WhereIs(Harbour("9-10")));
        Assert.Equal("putting away", house.House.Desk.Undo!.What);
    }

    [Fact]
    public async Task A_place_that_was_mistyped_is_not_made_and_the_form_comes_back_as_typed()
    {
        await using var house = await TestHouse.OnDemoAsync();
        var places = house.Register.LookAround.Book().Places.Count;
        await house.PressOnAsync(Harbour("9"), "m");
        await house.FillAsync(("Place", "Drwaer 2"), ("Note", "dry"));

        await house.PressAsync("n");

        Assert.Equal(("Drwaer 2", "dry"), (house.Form["Place"], house.Form["Note"]));
        await house.FillAsync(("Place", "Drawer 2"));
        Assert.Equal("1 sheet put away in Studio › Plan chest › Drawer 2, 2027-03-01.", house.Message);
        Assert.Equal(places, house.Register.LookAround.Book().Places.Count);
    }

    [Fact]
    public async Task A_new_place_stays_where_putting_away_is_refused_and_both_is_said()
    {
        await using var house = await TestHouse.OnDemoAsync();
        await house.PressOnAsync(Harbour("5"), "m");
        var code = house.Sheet(Harbour("5")).ShownCode;
        await house.FillAsync(("Place", "Loft"));

        await house.PressAsync("y");

        Assert.Equal($"Loft is a place now. But: {code} is with Quay Gallery, so it cannot be put away here. Nothing else was changed. Record its return first with `edreg return`.", house.Message);
        Assert.Equal("with Quay Gallery", house.WhereIs(Harbour("5")));
    }

    [Theory]
    [InlineData("Place", "", "Place is needed: Drawer 3, or from the outside in: Studio › Plan chest › Drawer 3.")]
    [InlineData("Date", "yesterday", "“yesterday” is no date that can be read: write 2026, 2026-03, 2026-03-01, c. 2026, spring 2026 or 2024 to 2026.")]
    public async Task What_is_not_right_is_said_and_the_form_stays_open(string field, string typed, string problem)
    {
        await using var house = await TestHouse.OnDemoAsync();
        await house.PressOnAsync(Harbour("9"), "m");

        await house.FillAsync(("Place", "Drawer 2"), (field, typed));

        Assert.Equal(problem, house.Form.Problem);
        Assert.Equal("in Studio › Plan chest › Drawer 1", house.WhereIs(Harbour("9")));
    }

    [Fact]
    public async Task A_sheet_that_another_window_gave_away_meanwhile_is_refused_and_what_was_typed_stays()
    {
        await using var house = await TestHouse.OnDemoAsync();
        await house.PressOnAsync(Harbour("9"), "m");
        house.Register.Consign.Run(Harbour("9"), "Quay Gallery");

        await house.FillAsync(("Place", "Drawer 2"));

        Assert.Equal(
            $"{house.Sheet(Harbour("9")).ShownCode} is with Quay Gallery, so it cannot be put away here. Nothing was changed. Record its return first with `edreg return`.",
            house.Form.Problem);
        Assert.Equal("Drawer 2", house.Form["Place"]);
    }

    [Fact]
    public async Task As_last_time_takes_the_place_and_not_the_note()
    {
        await using var house = await TestHouse.OnDemoAsync();
        await house.PressOnAsync(Harbour("9"), "m");
        await house.FillAsync(("Place", "Drawer 2"), ("Note", "corner bent"));
        await house.PressOnAsync(Harbour("10"), "m");

        house.Form.Fill(house.House.Desk.Answers.Last(house.Form)!, all: false);

        Assert.Equal(("Drawer 2", null), (house.Form["Place"], house.Form["Note"]));
    }

    [Fact]
    public async Task A_new_place_by_itself_is_made_with_a_hint_how_to_put_it_inside_another()
    {
        await using var house = await TestHouse.OnEmptyAsync();
        house.Register.Unnumbered();
        await house.PressOnAsync(SmallStudio.Pile(1, "1"), "m");
        await house.FillAsync(("Place", "Loft"));

        Assert.Equal("There is no place “Loft” yet. Make “Loft” and put 1 sheet there?", house.Question.Asked);
        Assert.Equal("It stands by itself then. A place inside another", house.Question.Shown[0].ToString());
        await house.PressAsync("y");

        Assert.Equal("Loft is a place now. 1 sheet put away in Loft, 2027-03-01.", house.Message);
    }
}

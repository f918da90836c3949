using EditionRegister.Tui.PlanChest;

namespace EditionRegister.Tui.Tests.PlanChest;

/// <summary>Several sheets of a tray chosen for what is done next.</summary>
public sealed class MarkingTests
{
    [Fact]
    public async Task Space_marks_and_unmarks_and_every_room_sees_the_codes()
    {
        await using var house = await TestHouse.OnDemoAsync();
        await house.OpenAsync(1);

        await house.PressAsync("Space", "Right", "Space", "Right", "Space", "Space");

        Assert.Equal(["MEKA-X5ED", "76K2-MW98"], house.House.Desk.Marked.Codes);
        Assert.Contains(" • 1 h   • 2 h  ›  3 c", house.Screen(), StringComparison.Ordinal);
        Assert.Contains("2 marked here", house.Screen(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task h_marks_from_the_last_mark_to_here_either_way()
    {
        await using var house = await TestHouse.OnDemoAsync();
        await house.OpenAsync(1);

        await house.PressAsync("Right", "Right", "Right", "Space", "Left", "Left", "h");

        Assert.Equal("“Harbour at Low Water” 4/12, 2/12, 3/12", Chosen(house));
    }

    [Fact]
    public async Task h_is_offered_only_where_there_is_a_mark_to_begin_from()
    {
        await using var house = await TestHouse.OnDemoAsync();
        await house.OpenAsync(1);
        var before = Keys(house);

        await house.PressAsync("Space", "Right");

        Assert.DoesNotContain("h mark up to here", before);
        Assert.Contains("h mark up to here", Keys(house));
    }

    [Fact]
    public async Task Numbers_typed_are_marked_and_a_run_of_them_is_called_by_its_ends()
    {
        await using var house = await TestHouse.OnDemoAsync();
        await house.OpenAsync(1);
        await house.PressAsync("k");

        await house.FillAsync(("Numbers", "3-7"));

        Assert.Equal("5 sheets marked.", house.Message);
        Assert.Equal("“Harbour at Low Water” 3/12 to 7/12", Chosen(house));
    }

    [Fact]
    public async Task A_number_outside_the_edition_is_refused_and_nothing_is_marked()
    {
        await using var house = await TestHouse.OnDemoAsync();
        await house.OpenAsync(1);
        await house.PressAsync("k");

        await house.FillAsync(("Numbers", "11-13"));

        Assert.Equal("11-13 lies outside the numbering 1/12 to 12/12 of “Harbour at Low Water”. Nothing was changed. Choose a number within it.", house.Form.Problem);
        Assert.Equal(0, house.House.Desk.Marked.Count);
    }

    [Fact]
    public async Task What_is_no_number_is_said_before_anything_is_asked_of_the_register()
    {
        await using var house = await TestHouse.OnDemoAsync();
        await house.OpenAsync(1);
        await house.PressAsync("k");

        await house.FillAsync(("Numbers", "7-3"));

        Assert.Contains("7-3", house.Form.Problem, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Marks_of_another_edition_stay_marked_and_are_not_meant_here()
    {
        await using var house = await TestHouse.OnDemoAsync();
        await house.OpenAsync(1);
        await house.PressAsync("Space");

        await house.OpenAsync(2);

        Assert.Contains("0 marked here, 1 elsewhere", house.Screen(), StringComparison.Ordinal);
        Assert.Equal("“Gull Rock” 1/8", Chosen(house));
    }

    [Fact]
    public async Task z_takes_all_marks_away()
    {
        await using var house = await TestHouse.OnDemoAsync();
        await house.OpenAsync(1);
        await house.PressAsync("Space", "Right", "Space");

        await house.PressAsync("z");

        Assert.Equal(0, house.House.Desk.Marked.Count);
        Assert.DoesNotContain("•", house.Screen(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_number_without_a_sheet_cannot_be_marked()
    {
        await using var house = await TestHouse.OnEmptyAsync();
        await house.OpenAsync(house.Register.Unnumbered());

        await house.PressAsync("Space");

        Assert.Equal(0, house.House.Desk.Marked.Count);
        Assert.DoesNotContain("Space mark", Keys(house));
    }

    [Fact]
    public async Task Many_sheets_not_in_a_run_are_counted_and_sheets_without_a_number_go_by_their_codes()
    {
        await using var house = await TestHouse.OnDemoAsync();
        await house.OpenAsync(1);
        await house.PressAsync("End");
        var beside = Chosen(house);
        await house.PressAsync("k");
        await house.FillAsync(("Numbers", "1, 3, 5, A/P I"));

        Assert.Equal("“Harbour at Low Water” 3UG4-MB9K", beside);
        Assert.Equal("4 sheets of “Harbour at Low Water”", Chosen(house));
    }

    private static string? Chosen(TestHouse house) => Assert.IsType<EditionPage>(house.House.Page).Chosen()?.Called;

    private static List<string> Keys(TestHouse house) => [.. house.House.Page.Keys.Select(key => $"{key.Key} {key.Does}")];
}

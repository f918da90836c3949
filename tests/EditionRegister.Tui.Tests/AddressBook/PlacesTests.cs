using EditionRegister.Tui.PlanChest;
using EditionRegister.UseCases.People;

namespace EditionRegister.Tui.Tests.AddressBook;

/// <summary>The places where sheets lie.</summary>
public sealed class PlacesTests
{
    [Theory]
    [InlineData(80, 19)]
    [InlineData(120, 35)]
    public async Task Every_place_is_listed_as_the_way_to_it(int width, int height)
    {
        await using var house = await TestHouse.OnDemoAsync();

        await house.PressAsync("7", "v");

        ApprovedScreen.Is(house.Screen(width, height), $"places-{width}", "AddressBook");
    }

    [Theory]
    [InlineData("plan chest", "place-around", 80, 19)]
    [InlineData("drawer 1", "place-drawer", 80, 19)]
    [InlineData("drawer 1", "place-drawer", 120, 35)]
    public async Task A_place_shows_what_lies_in_it_and_inside(string find, string name, int width, int height)
    {
        await using var house = await TestHouse.OnDemoAsync();
        await house.PressAsync("7", "v", "/");
        await house.TypeAsync(find);

        await house.PressAsync("Enter", "Enter");

        ApprovedScreen.Is(house.Screen(width, height), $"{name}-{width}", "AddressBook");
    }

    [Fact]
    public async Task Enter_goes_inside_and_then_to_a_sheet()
    {
        await using var house = await TestHouse.OnDemoAsync();
        await house.PressAsync("7", "v", "Enter", "Down", "Enter");
        Assert.Equal("Plan chest", house.House.Page.Title);

        await house.PressAsync("End", "Enter");

        Assert.IsType<ImpressionPage>(house.House.Page);
    }

    [Fact]
    public async Task A_place_is_recorded_inside_another_with_keeper_and_note()
    {
        await using var house = await TestHouse.OnDemoAsync();
        await house.PressAsync("7", "v", "Down", "Down", "n");
        Assert.Equal("Studio › Plan chest", house.Form["Inside"]);

        await house.FillAsync(("Name", "Drawer 3"), ("Kept by", "joost"), ("Note", "large papers"));

        Assert.Equal("Place 11 recorded: Studio › Plan chest › Drawer 3.", house.Message);
        var place = house.Register.LookAround.Book().Places[11];
        Assert.Equal((2, "large papers"), (place.Keeper, place.Note));
    }

    [Fact]
    public async Task A_place_known_already_is_left_as_it_is_and_it_is_said()
    {
        await using var house = await TestHouse.OnDemoAsync();
        await house.PressAsync("7", "v", "n");

        await house.FillAsync(("Inside", "studio"), ("Name", "plan chest › drawer 2"));

        Assert.Equal("Studio › Plan chest › Drawer 2 was recorded before, as place 4; nothing was changed.", house.Message);
    }

    [Fact]
    public async Task A_keeper_nobody_knows_is_refused_and_nothing_is_recorded()
    {
        await using var house = await TestHouse.OnDemoAsync();
        var head = house.Register.LookAround.Head();
        await house.PressAsync("7", "v", "n");

        await house.FillAsync(("Name", "Drawer 9"), ("Kept by", "Nobody"));

        Assert.Equal("Nobody called “Nobody” is in the address book. Nothing was changed. Record them first with `edreg person add`, or name them by their number.", house.Form.Problem);
        Assert.Equal(head, house.Register.LookAround.Head());
    }

    [Fact]
    public async Task A_name_is_put_right_undone_and_a_change_made_meanwhile_refused()
    {
        await using var house = await TestHouse.OnDemoAsync();
        await house.PressAsync("7", "v", "/");
        await house.TypeAsync("drawer 2");
        await house.PressAsync("Enter", "e");

        await house.FillAsync(("Name", "Drawer 12"));
        Assert.Equal("Place 4 put right: Studio › Plan chest › Drawer 12.", house.Message);
        await house.PressAsync("u");
        Assert.Equal("Place 4 put right: Studio › Plan chest › Drawer 2.", house.Message);

        await house.PressAsync("e");
        house.Register.EditPlace.Run(4, new PlaceCorrection { Name = "Drawer B" });
        await house.FillAsync(("Name", "Drawer 13"));

        Assert.Equal("Someone changed this while you were looking at it: name is now “Drawer B”, you wanted “Drawer 13”. Nothing was changed. Look at it as it stands and do this again.", house.Form.Problem);
    }

    [Fact]
    public async Task A_register_without_places_says_how_one_is_named()
    {
        await using var house = await TestHouse.OnEmptyAsync();

        await house.PressAsync("7", "v");

        Assert.Contains("No place is recorded yet. Press n and name one from the outside in", house.Screen(), StringComparison.Ordinal);
    }
}

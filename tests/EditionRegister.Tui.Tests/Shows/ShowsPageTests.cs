using EditionRegister.Domain.Dates;
using EditionRegister.Domain.Shows;
using EditionRegister.Tui.Tests.PlanChest;

namespace EditionRegister.Tui.Tests.Shows;

/// <summary>The list of shows, and making one.</summary>
public sealed class ShowsPageTests
{
    [Fact]
    public async Task An_empty_register_says_how_one_is_made()
    {
        await using var house = await TestHouse.OnEmptyAsync();

        await house.PressAsync("6");

        Assert.Equal(
            """
            / finds by name, kind, date or place
               name                kind        when                      place        sheets
            No show is recorded yet. Press n to make one: an exhibition, a sale or a fair.
            """,
            house.Screen());
        Assert.Equal(["n"], house.House.Page.Keys.Select(key => key.Key));
    }

    [Fact]
    public async Task One_is_made_said_as_the_command_says_it_and_opens()
    {
        await using var house = await TestHouse.OnDemoAsync();
        await house.PressAsync("6", "n");

        await house.FillAsync(("Name", "Print fair"), ("Kind", "fair"), ("Place", "Print room"), ("Host", "Westhaven School"), ("Opens", "2026-09-04"), ("Closes", "2026-09-06"), ("Note", "Table 12"));

        Assert.Equal("Show 1 recorded: “Print fair”, fair, 2026-09-04 to 2026-09-06. Press a to list sheets for it.", house.Message);
        Assert.Equal(
            """
            fair, 2026-09-04 to 2026-09-06, 0 sheets listed
            Place   Westhaven School › Print room
            Host    Westhaven School
            Note    Table 12

               title                maker            number          price  where it is
            No sheet is on the list yet. Press a to list some.
            """,
            house.Screen());
    }

    [Theory]
    [InlineData("Name", "", "Name is needed: as it is announced: Open studio 2026.")]
    [InlineData("Opens", "soon", "“soon” is no date that can be read: write ")]
    [InlineData("Closes", "2026-09-01", "A show that opens 2026-09-04 cannot close 2026-09-01, which is before. Nothing was changed.")]
    [InlineData("Place", "The moon", "There is no place “The moon”")]
    [InlineData("Host", "Nobody Known", "Nobody called “Nobody Known” is in the address book")]
    public async Task What_is_not_right_is_said_in_the_form_and_nothing_is_recorded(string field, string typed, string problem)
    {
        await using var house = await TestHouse.OnDemoAsync();
        await house.PressAsync("6", "n");

        await house.FillAsync([("Name", "Print fair"), ("Opens", "2026-09-04"), (field, typed)]);

        Assert.StartsWith(problem, house.Form.Problem, StringComparison.Ordinal);
        Assert.Empty(house.Register.LookAround.Shows());
    }

    [Fact]
    public async Task Places_and_people_of_the_register_are_suggested()
    {
        await using var house = await TestHouse.OnDemoAsync();
        await house.PressAsync("6", "n");

        Assert.Contains("Westhaven School › Print room › Display board", house.Form.FieldOf("Place").Known("board"));
        Assert.Contains("Quay Gallery", house.Form.FieldOf("Host").Known("quay"));
    }

    [Theory]
    [InlineData(80, 19)]
    [InlineData(120, 35)]
    public async Task The_latest_stand_first_and_all_is_legible(int width, int height)
    {
        var (house, _) = await ShowsHouse.WithShowAsync();
        await using var open = house;
        house.Register.MakeShow.Run(new NewShow { Name = "海の版画と港の灯り、冬の朝に、そして春の午後に", Place = 3, Opens = RecordedDate.Read("2027"), Closes = RecordedDate.Read("2027-02") });
        house.Register.MakeShow.Run(new NewShow { Name = "Some day", Kind = "other" });

        await house.PressAsync("Esc");

        ApprovedScreen.Is(house.Screen(width, height), $"shows-{width}", "Shows");
    }

    [Fact]
    public async Task One_is_found_as_one_types()
    {
        var (house, _) = await ShowsHouse.WithShowAsync();
        await using var open = house;
        house.Register.MakeShow.Run(new NewShow { Name = "Class 8B" });
        await house.PressAsync("Esc", "/");

        await house.TypeAsync("sale studio");
        var found = house.Screen();
        await house.TypeAsync("x");

        Assert.Contains("Open studio 2026", found, StringComparison.Ordinal);
        Assert.DoesNotContain("Class 8B", found, StringComparison.Ordinal);
        Assert.Contains("No show is called so.", house.Screen(), StringComparison.Ordinal);
    }
}

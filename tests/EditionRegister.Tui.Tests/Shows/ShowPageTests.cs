using EditionRegister.Tui.PlanChest;
using EditionRegister.Tui.Tests.Documents;
using EditionRegister.Tui.Tests.PlanChest;
using EditionRegister.UseCases.Choosing;

namespace EditionRegister.Tui.Tests.Shows;

/// <summary>A show and its list.</summary>
public sealed class ShowPageTests
{
    [Theory]
    [InlineData(80, 19)]
    [InlineData(120, 35)]
    public async Task What_is_known_of_it_stands_above_its_list_in_list_order(int width, int height)
    {
        var (house, _) = await ShowsHouse.WithShowAsync();
        await using var open = house;

        ApprovedScreen.Is(house.Screen(width, height), $"show-{width}", "Shows");
    }

    [Fact]
    public async Task A_pupil_is_called_as_in_public_and_the_caution_stands_below()
    {
        var (house, _) = await ShowsHouse.WithShowAsync();
        await using var open = house;

        Assert.Contains("8B-11", house.Screen(), StringComparison.Ordinal);
        Assert.DoesNotContain("Birdseye", house.Screen(200, 60), StringComparison.Ordinal);
        Assert.EndsWith("What may be shown of pupils and their prints is for the school's policy and the\nlaw where you are to say.", house.Screen(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Numbers_of_an_edition_are_listed_at_the_end_and_it_is_undone()
    {
        var (house, show) = await ShowsHouse.WithShowAsync();
        await using var open = house;
        await house.PressAsync("a", "e", "/");
        await house.TypeAsync("gull");
        await house.PressAsync("Enter", "r");

        await house.FillAsync(("Numbers", "A/P I, 2"));

        Assert.Equal("2 sheets listed for “Open studio 2026”; 5 in all.", house.Message);
        Assert.Equal(["Harbour at Low Water 3/12", "Harbour at Low Water 1/12", "Heron 1/2", "Gull Rock A/P I/I", "Gull Rock 2/8"], house.Listed(show));
        Assert.Contains("2/8", house.Screen(), StringComparison.Ordinal);

        await house.PressAsync("u");

        Assert.Equal("2 sheets taken off the list of “Open studio 2026”; 3 in all.", house.Message);
        Assert.Equal(3, house.Listed(show).Count());
    }

    [Fact]
    public async Task Of_an_edition_taken_whole_what_is_listed_already_is_passed_over()
    {
        var (house, show) = await ShowsHouse.WithShowAsync();
        await using var open = house;
        await house.PressAsync("a", "e", "/");
        await house.TypeAsync("heron");

        await house.PressAsync("Enter", "Enter");

        Assert.Equal("1 sheet listed for “Open studio 2026”; 4 in all. 1 passed over: listed already or left out.", house.Message);
        Assert.Equal("Heron 2/2", house.Listed(show).Last());
    }

    [Fact]
    public async Task Of_a_place_what_is_left_out_is_passed_over()
    {
        var (house, show) = await ShowsHouse.WithShowAsync();
        await using var open = house;
        await house.PressAsync("a", "p", "/");
        await house.TypeAsync("drawer 1");

        await house.PressAsync("Enter", "Enter");

        // 15 lie there: 1 left out, and 1/12 is listed already; 3 were listed before.
        Assert.Equal("13 sheets listed for “Open studio 2026”; 16 in all. 2 passed over: listed already or left out.", house.Message);
        Assert.DoesNotContain("Harbour at Low Water left out", house.Listed(show));
    }

    [Fact]
    public async Task Of_a_place_where_nothing_fits_or_nothing_lies_nothing_is_listed()
    {
        var (house, show) = await ShowsHouse.WithShowAsync();
        await using var open = house;
        house.Register.RecordPlace.Run("Attic");
        await house.PressAsync("a", "p", "/");
        await house.TypeAsync("attic");
        await house.PressAsync("Enter", "Enter");
        var nothing = house.Message;

        await house.PressAsync("a", "l", "Enter");

        Assert.Equal("Nothing was listed: no sheet is among these.", nothing);
        Assert.Equal("Nothing was listed: of 3 sheets every one is listed already or left out.", house.Message);
        Assert.Equal(3, house.Listed(show).Count());
    }

    [Fact]
    public async Task Marked_sheets_are_listed_and_one_that_is_listed_already_is_refused()
    {
        var (house, show) = await ShowsHouse.WithShowAsync();
        await using var open = house;
        house.House.Desk.Marked.Turn(house.Sheet(1, "5").ShownCode);
        await house.PressAsync("a", "m");
        var said = house.Message;

        await house.PressAsync("a", "m");

        Assert.Equal("1 sheet listed for “Open studio 2026”; 4 in all.", said);
        Assert.Equal($"{house.Sheet(1, "5").ShownCode} is listed in “Open studio 2026” already. Nothing was changed. `edreg shows see 1` shows the list; name only what is not on it.", house.Message);
        Assert.Equal(4, house.Listed(show).Count());
    }

    [Fact]
    public async Task The_sheet_under_the_cursor_is_taken_off_and_gets_its_place_back()
    {
        var (house, show) = await ShowsHouse.WithShowAsync();
        await using var open = house;

        await house.PressAsync("x");
        var said = house.Message;
        var left = house.Listed(show).ToList();
        await house.PressAsync("u");

        Assert.Equal("1 sheet taken off the list of “Open studio 2026”; 2 in all.", said);
        Assert.Equal(["Harbour at Low Water 1/12", "Heron 1/2"], left);
        Assert.Equal("1 sheet listed for “Open studio 2026”; 3 in all.", house.Message);
        Assert.Equal("Harbour at Low Water 3/12", house.Listed(show).First());
    }

    [Fact]
    public async Task Marked_sheets_are_taken_off_together_and_marks_elsewhere_stay_out_of_it()
    {
        var (house, show) = await ShowsHouse.WithShowAsync();
        await using var open = house;
        house.House.Desk.Marked.Turn(house.Sheet(1, "5").ShownCode);

        await house.PressAsync("Space", "Down", "Space", "Down");
        var foot = house.Screen();
        await house.PressAsync("x");

        Assert.Contains("2 marked here, 1 elsewhere", foot, StringComparison.Ordinal);
        Assert.Equal("2 sheets taken off the list of “Open studio 2026”; 1 in all.", house.Message);
        Assert.Equal(["Heron 1/2"], house.Listed(show));
    }

    [Fact]
    public async Task A_sheet_that_another_window_took_off_meanwhile_is_refused()
    {
        var (house, _) = await ShowsHouse.WithShowAsync();
        await using var open = house;
        house.Register.RemoveFromShow.Run(1, new ImpressionChoice { Edition = 1, Sheets = "3" });

        await house.PressAsync("x");

        Assert.Equal($"{house.Sheet(1, "3").ShownCode} is not listed in “Open studio 2026”. Nothing was changed. `edreg shows see 1` shows what is.", house.Message);
    }

    [Fact]
    public async Task Enter_opens_the_sheet_and_Esc_leads_back()
    {
        var (house, _) = await ShowsHouse.WithShowAsync();
        await using var open = house;

        await house.PressAsync("Enter");

        Assert.IsType<ImpressionPage>(house.House.Page);
        await house.PressAsync("Esc");
        Assert.Equal("Open studio 2026", house.House.Page.Title);
    }

    [Fact]
    public async Task Its_inventory_is_looked_at_and_written()
    {
        var (house, _) = await ShowsHouse.WithShowAsync();
        await using var open = house;
        await house.PressAsync("v");
        var read = house.Screen();

        await house.PressAsync("w");

        Assert.StartsWith("inventory as CSV, without owners: to hand out; the list of “Open studio 2026”\ninventory.csv: 3 impressions, 24 columns.\n1 of 3: ", read, StringComparison.Ordinal);
        Assert.Equal("3 impressions listed in /register/exports/inventory.csv.", house.Said());
        Assert.Equal(4, (await File.ReadAllLinesAsync(house.Exported("inventory.csv"), TestContext.Current.CancellationToken)).Length);
    }
}

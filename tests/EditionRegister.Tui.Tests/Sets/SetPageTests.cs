using EditionRegister.UseCases.Looking;

namespace EditionRegister.Tui.Tests.Sets;

/// <summary>The portfolio of the demo in the plan chest and at the bench, and a set gathered by keys.</summary>
public sealed class SetPageTests
{
    [Fact]
    public async Task The_copies_stand_with_what_lies_in_them()
    {
        await using var house = await OnPortfolioAsync();

        ApprovedScreen.Is(house.Screen(), "set-80", "Sets");
        ApprovedScreen.Is(house.Screen(120, 35), "set-120", "Sets");
        Assert.Empty(house.Bugs);
    }

    [Fact]
    public async Task A_sheet_is_taken_out_and_gathered_again_by_one_key()
    {
        await using var house = await OnPortfolioAsync();

        await house.PressAsync("x", "Enter");
        Assert.Equal("1 sheet taken out of the copies of “Four Tides”; it stays where it is.", house.Message);
        Assert.Contains("3 of 4: without “Ebb”", house.Screen(120, 35), StringComparison.Ordinal);
        await house.PressAsync("g");

        Assert.Equal("1 sheet gathered into the copies of “Four Tides”.", house.Message);
        Assert.Equal(4, Seen(house).Gathered(Seen(house).Copies[0]));
        await house.PressAsync("u");
        Assert.Equal(3, Seen(house).Gathered(Seen(house).Copies[0]));
        Assert.Empty(house.Bugs);
    }

    [Fact]
    public async Task Several_marked_copies_are_gathered_together()
    {
        await using var house = await OnPortfolioAsync();
        await house.PressAsync("x", "Enter", "Down", "Down", "x", "Enter", "Home");

        await house.PressAsync("Space", "Down", "Space");
        Assert.Contains("2 copies marked: g gathers them all.", house.Screen(), StringComparison.Ordinal);
        await house.PressAsync("g");

        Assert.Equal("2 sheets gathered into the copies of “Four Tides”.", house.Message);
        Assert.All(Seen(house).Copies, copy => Assert.Equal(4, Seen(house).Gathered(copy)));
    }

    [Fact]
    public async Task A_sheet_that_lies_in_another_copy_is_refused_in_the_form()
    {
        await using var house = await OnPortfolioAsync();
        var sheet = Seen(house).Copies[2].SetSheets[0];

        await house.PressAsync("h");
        await house.FillAsync(("Codes", sheet.ShownCode));

        Assert.Equal($"3/3 of “Ebb” ({sheet.ShownCode}) lies in copy 3/3 of “Four Tides” already. Nothing was changed. Take it out first with `edreg set take-out`, or name another sheet.", house.Form.Problem);
    }

    [Fact]
    public async Task A_work_becomes_a_set_and_gets_its_first_part()
    {
        await using var house = await Bench.OnTheBench.WithPullsAsync();
        house.Register.RecordWork.Run(new Domain.Works.NewWork { Title = "Colophon" }, ["1"]);
        await house.PressAsync("2", "Enter", "s");

        await house.FillAsync(("What holds it", "suite"), ("Signed on", "sheets"));
        Assert.Equal("“Colophon” is a suite, signed on the sheets.", house.Message);
        Assert.Contains("It has no parts yet: n adds one.", house.Screen(), StringComparison.Ordinal);
        await house.PressAsync("n");
        await house.FillAsync(("Part", "Harbour"));

        Assert.Equal("1 part added to “Colophon”; 1 in all.", house.Message);
        await house.PressAsync("u");
        Assert.Equal("“Harbour” is no part of “Colophon” any more; 0 in all.", house.Message);
        Assert.Empty(house.Bugs);
    }

    private static async Task<TestHouse> OnPortfolioAsync()
    {
        var house = await TestHouse.OnDemoAsync();
        await house.PressAsync("/");
        await house.TypeAsync("four tides");
        await house.PressAsync("Enter", "Enter", "+", "s");

        return house;
    }

    private static SetSeen Seen(TestHouse house) => house.Register.LookAround.Sets().Single(set => set.Work.Title == "Four Tides");
}

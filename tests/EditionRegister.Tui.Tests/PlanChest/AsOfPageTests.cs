using EditionRegister.Domain.Chains;
using EditionRegister.Domain.Dates;
using EditionRegister.Tui.PlanChest;
using EditionRegister.UseCases.Moves;

namespace EditionRegister.Tui.Tests.PlanChest;

/// <summary>An edition as it stood on a day: the demo's “Harbour at Low Water”, of which a sale of 20 May is written down in March of the year after.</summary>
public sealed class AsOfPageTests
{
    [Fact]
    public async Task An_edition_as_it_stood_lies_beside_what_is_known_now()
    {
        await using var house = await OnDemoAsync();

        await AskAsync(house, "2026-05-31");

        Assert.Equal("As it stood on 2026-05-31, to be read only", house.House.Page.Title);
        ApprovedScreen.Is(house.Screen(), "as-of-80");
        ApprovedScreen.Is(house.Screen(120, 35), "as-of-120");
        Assert.Empty(house.Bugs);
    }

    [Fact]
    public async Task Nothing_can_be_done_there_but_read()
    {
        await using var house = await OnDemoAsync();
        var before = house.Register.LookAround.Head();
        await AskAsync(house, "2026-05-31");

        Assert.Equal(["Esc"], house.House.Page.Keys.Select(key => key.Key));
        await house.PressAsync("s", "m", "Enter", "End");

        Assert.Equal(before, house.Register.LookAround.Head());
        await house.PressAsync("Esc");
        Assert.IsType<EditionPage>(house.House.Page);
    }

    [Theory]
    [InlineData("2020-01-01", "On 2020-01-01 there was no register yet: its first entry was made on 2026-01-05. Nothing was changed. Name that day or a later one; what was before it stands in what was recorded since.")]
    [InlineData("2099-01-01", "2099-01-01 is not here yet: today is 2027-03-01. Nothing was changed. Name today or a day before it.")]
    [InlineData("2026-05", "“2026-05” is not one day: write 2026-03-31.")]
    [InlineData("then", "“then” is not one day: write 2026-03-31.")]
    [InlineData("", "Day is needed: one day: 2026-03-31.")]
    public async Task A_day_that_will_not_do_is_said_where_it_was_typed(string typed, string problem)
    {
        await using var house = await OnDemoAsync();

        await AskAsync(house, typed);

        Assert.Equal(problem, house.Form.Problem);
    }

    private static async Task<TestHouse> OnDemoAsync()
    {
        var house = await TestHouse.OnDemoAsync();
        house.Register.SellImpressions.Run(SmallStudio.Numbers(1, "12"), new SalePeople("Inés Vargøy"), new Sale { Date = RecordedDate.Read("2026-05-20"), Price = 18_000, Currency = "EUR" });
        await house.OpenAsync(1);

        return house;
    }

    private static async Task AskAsync(TestHouse house, string day)
    {
        await house.PressAsync("+", "y");
        await house.FillAsync(("Day", day));
    }
}

using EditionRegister.Domain.Dates;
using EditionRegister.Domain.Shows;
using EditionRegister.Tui.Asking;
using static EditionRegister.Tui.Tests.Sheets.OnSheets;

namespace EditionRegister.Tui.Tests.Sheets;

/// <summary>Putting sheets on the list of a show.</summary>
public sealed class ShowListTests
{
    [Fact]
    public async Task Sheets_are_listed_for_the_show_picked_and_taken_off_again()
    {
        await using var house = await TestHouse.OnDemoAsync();
        var fair = house.Register.MakeShow.Run(new NewShow { Name = "Print fair", Kind = "fair", Opens = RecordedDate.Read("2027-04-01") });
        house.Register.MakeShow.Run(new NewShow { Name = "Open studio" });
        await house.PressOnAsync(Harbour("9-10"), "w");
        var offered = Assert.IsType<Choice>(house.House.Asking).Among.Select(one => one.Shown).TakeLast(2).ToList();

        await house.PressAsync("Down", "Enter");
        var (said, listed) = (house.Message, house.Register.LookAround.Show(fair).Listed.Count);
        await house.PressAsync("u");

        Assert.Equal("“Open studio”, exhibition", offered[0]);
        Assert.Equal("“Print fair”, fair, from 2027-04-01", offered[1]);
        Assert.Equal("2 sheets listed for “Print fair”; 2 in all.", said);
        Assert.Equal(2, listed);
        Assert.Equal("2 sheets taken off the list of “Print fair”; 0 in all.", house.Message);
        Assert.Empty(house.Register.LookAround.Show(fair).Listed);
    }

    [Fact]
    public async Task What_is_listed_already_is_refused_by_name()
    {
        await using var house = await TestHouse.OnDemoAsync();
        var fair = house.Register.MakeShow.Run(new NewShow { Name = "Print fair" });
        house.Register.AddToShow.Run(fair, Harbour("9"));
        await house.PressOnAsync(Harbour("9-10"), "w");

        await house.PressAsync("Enter");

        Assert.StartsWith($"{house.Sheet(Harbour("9")).ShownCode} is listed in “Print fair” already. Nothing was changed.", house.Message, StringComparison.Ordinal);
        Assert.Single(house.Register.LookAround.Show(fair).Listed);
    }

    [Fact]
    public async Task Where_no_show_is_recorded_it_is_said_how_to_make_one()
    {
        await using var house = await TestHouse.OnEmptyAsync();
        PlanChest.SmallStudio.Unnumbered(house.Register);

        await house.PressOnAsync(PlanChest.SmallStudio.Pile(1, "1"), "w");

        Assert.Null(house.House.Asking);
        Assert.Equal("No show is recorded yet. Make one first: 6 goes to the Shows, and n makes a new one there.", house.Message);
    }
}

using EditionRegister.Domain.Chains;
using EditionRegister.Domain.Dates;
using EditionRegister.Tui.Asking;
using EditionRegister.Tui.PlanChest;
using EditionRegister.Tui.Tests.Sheets;
using EditionRegister.UseCases.Moves;
using static EditionRegister.Tui.Tests.Sheets.OnSheets;

namespace EditionRegister.Tui.Tests.PlanChest;

/// <summary>What is due, steps put right from the history, and prints of others.</summary>
public sealed class DueAndAmendTests
{
    [Fact]
    public async Task What_is_over_opens_as_a_sheet()
    {
        await using var house = await TestHouse.OnDemoAsync();

        await house.PressAsync("1", "t");
        var page = Assert.IsType<DuePage>(house.House.Page);
        var screen = house.Screen();
        await house.PressAsync("Enter");

        // The demo's day is 2027-03-01: two of the summer hang ran out with 2026, three of the autumn with February.
        Assert.Equal(5, page.Rows.Count);
        Assert.Contains("5 sheets over on 2027-03-01, 0 to come within 30 days.", screen, StringComparison.Ordinal);
        Assert.Contains("! over", screen, StringComparison.Ordinal);
        Assert.IsType<ImpressionPage>(house.House.Page);
    }

    [Fact]
    public async Task Nothing_due_is_said()
    {
        await using var house = await TestHouse.OnEmptyAsync();

        await house.PressAsync("1", "t");

        Assert.Contains("Nothing is due on 2027-03-01 or within 30 days after it.", house.Screen(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_consignment_is_prolonged_from_the_history()
    {
        await using var house = await TestHouse.OnDemoAsync();
        await house.OpenSheetAsync(Harbour("5"));

        await house.PressAsync("h", "e", "Down", "Enter", "p");
        await house.FillAsync(("Until", "2027-12-31"), ("Note", "prolonged by letter"));

        var (code, link) = (house.Sheet(Harbour("5")).ShownCode, house.Sheet(Harbour("5")).Whereabouts[1]);
        Assert.Equal($"Step 2 of {code} was put right in its whereabouts; the logbook keeps what it said.", house.Message);
        Assert.Equal(("2027-12-31", "prolonged by letter", 4_000), (link.Until.Text, link.Note, link.Rate));
    }

    [Fact]
    public async Task What_another_window_put_right_meanwhile_is_not_overwritten()
    {
        await using var house = await TestHouse.OnDemoAsync();
        await house.OpenSheetAsync(Harbour("5"));
        await house.PressAsync("h", "e", "Down", "Enter", "p");
        house.Register.AmendChain.Move(house.Sheet(Harbour("5")).ShownCode, new AmendedStep(2), null, new MoveCorrection { Date = RecordedDate.Read("2026-06-07") });

        await house.FillAsync(("Until", "2027-12-31"));

        Assert.StartsWith("Someone changed this while you were looking at it", house.Form.Problem, StringComparison.Ordinal);
    }

    [Fact]
    public async Task An_owner_learned_of_late_is_put_in_between_and_taken_out_again()
    {
        await using var house = await TestHouse.OnDemoAsync();
        await house.OpenSheetAsync(Harbour("3"));
        await house.PressAsync("h", "e", "Down", "Down", "Enter", "a");
        await house.FillAsync(("What", "given"), ("To whom", "Joost Averink"));
        var owners = house.Sheet(Harbour("3")).Ownership.Select(link => link.Kind).ToList();

        await house.PressAsync("e", "Down", "Down", "Down", "Enter", "o", "y");

        Assert.Equal(["made", "given", "sold"], owners);
        Assert.Equal(["made", "sold"], house.Sheet(Harbour("3")).Ownership.Select(link => link.Kind));
    }

    [Fact]
    public async Task A_print_of_somebody_elses_edition_is_recorded_and_opens()
    {
        await using var house = await TestHouse.OnDemoAsync();

        await house.PressAsync("1", "k");
        await house.FillAsync(("Title", "Weir"), ("Maker", "Ada Brandt"), ("Number", "14/75"), ("All in all", "83"), ("Place", "Drawer 1"));

        Assert.StartsWith("“Weir” 14/75 is recorded as somebody else's edition of 83 in all; its code is ", house.Message, StringComparison.Ordinal);
        Assert.IsType<ImpressionPage>(house.House.Page);
    }

    [Fact]
    public async Task An_old_edition_is_recorded_stretch_by_stretch_at_the_bench()
    {
        await using var house = await TestHouse.OnEmptyAsync();
        house.Register.RecordPerson.Run(new() { Name = "Mira Tolland" });
        house.Register.RecordPlace.Run("Drawer 3");
        house.Register.RecordWork.Run(new() { Title = "Old Pier" }, ["1"]);
        await house.PressAsync("2", "Enter", "k");
        await house.FillAsync(("Numbers", "1-14"));
        var problem = house.Form.Problem;
        await house.FillAsync(("Of how many", "30"));
        var sold = house.Message;

        await house.PressAsync("k");
        await house.FillAsync(("Numbers", "15-30"), ("They are", "here, or with someone"), ("Place", "Drawer 3"));

        Assert.StartsWith("How many numbers there are of “Old Pier” was not said yet.", problem, StringComparison.Ordinal);
        Assert.Equal("14 numbers of “Old Pier” sold before the register, buyers not known.", sold);
        Assert.Equal("16 sheets of “Old Pier” recorded, Drawer 3.", house.Message);
        Assert.Empty(house.Register.CheckRegister.Run());
    }
}

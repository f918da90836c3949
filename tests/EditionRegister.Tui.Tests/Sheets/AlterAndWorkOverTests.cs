using EditionRegister.Tui.Asking;
using EditionRegister.Tui.PlanChest;
using EditionRegister.UseCases.Choosing;
using static EditionRegister.Tui.Tests.Sheets.OnSheets;

namespace EditionRegister.Tui.Tests.Sheets;

/// <summary>What is done to a sheet itself now and then: its pencil altered, a sheet left out worked over.</summary>
public sealed class AlterAndWorkOverTests
{
    private static readonly ImpressionChoice LeftOut = new() { Work = 1, Pile = "16" };

    [Fact]
    public async Task A_number_altered_on_the_sheet_is_told_with_both_values_and_taken_back()
    {
        await using var house = await TestHouse.OnDemoAsync();
        var code = house.Sheet(Harbour("9")).ShownCode;

        await house.PressOnAsync(Harbour("9"), "o");
        await house.PressAsync("a");
        Assert.Equal("On record: number “9/12”, title “Harbour at Low Water”, signature “M. Tolland”.", house.Form.About[0]);
        await house.FillAsync(("Stands there now", "9/12 *"), ("Why", "a star was added"));

        Assert.Equal($"The number on {code} was “9/12” and is “9/12 *”, 2027-03-01: changed on the sheet itself.", house.Message);
        Assert.Equal("9/12 *", house.Sheet(Harbour("9")).Pencilled);
        await house.PressAsync("u");
        Assert.Equal($"The last change on {code} is taken back: it was never made.", house.Message);
        Assert.Equal(("9/12", 0), (house.Sheet(Harbour("9")).Pencilled, house.Sheet(Harbour("9")).Changes.Count));
        Assert.Empty(house.Bugs);
    }

    [Fact]
    public async Task An_alteration_is_of_one_sheet()
    {
        await using var house = await TestHouse.OnDemoAsync();

        await house.PressOnAsync(Harbour("9-10"), "o");
        await house.PressAsync("a");

        Assert.Equal("What was altered on a sheet is recorded for one sheet at a time. Nothing was changed. Choose one sheet.", house.Message);
    }

    [Fact]
    public async Task A_sheet_left_out_becomes_a_work_of_its_own_and_its_page_opens()
    {
        await using var house = await TestHouse.OnDemoAsync();
        var code = house.Sheet(LeftOut).ShownCode;

        await house.PressOnAsync(LeftOut, "o");
        await house.PressAsync("w");
        await house.FillAsync(("Its title", "Harbour by Lamplight"));

        var made = house.Register.LookAround.Works()[^1];
        Assert.Equal($"{code} of “Harbour at Low Water” was worked over by hand into work {made.Id}, “Harbour by Lamplight”: a unique work, whose sheet has the code {made.Impressions[0].ShownCode}.", house.Message);
        Assert.Equal("“Harbour by Lamplight” 1/1", Assert.IsType<ImpressionPage>(house.House.Page).Title);
        Assert.Contains($"Worked over from  {code} of work 1, “Harbour at Low Water”", house.Screen(), StringComparison.Ordinal);
        Assert.Equal("gone", house.Sheet(LeftOut).Where!.State);
        Assert.Empty(house.Bugs);
    }

    [Fact]
    public async Task A_kept_sheet_is_refused_before_anything_is_asked()
    {
        await using var house = await TestHouse.OnDemoAsync();

        await house.PressOnAsync(Harbour("9"), "o");
        await house.PressAsync("w");

        Assert.IsNotType<Form>(house.House.Asking, exactMatch: false);
        Assert.EndsWith("is numbered 9/12, and only a sheet left out is worked over into a work of its own. Nothing was changed. Leave it out first with `edreg sort left-out`, or name another sheet.", house.Message, StringComparison.Ordinal);
    }
}

using EditionRegister.Domain.Impressions;
using EditionRegister.Tui.Tests.PlanChest;
using static EditionRegister.Tui.Tests.Sheets.OnSheets;

namespace EditionRegister.Tui.Tests.Sheets;

/// <summary>Putting right what is recorded of the sheets themselves.</summary>
public sealed class StandingTests
{
    [Fact]
    public async Task A_sheet_is_left_out_for_a_fault_and_its_condition_is_recorded()
    {
        await using var house = await TestHouse.OnEmptyAsync();
        house.Register.Unnumbered();
        await house.PressOnAsync(SmallStudio.Pile(1, "6"), "e");

        await house.FillAsync(("Standing", "left-out"), ("Fault", "crease"), ("More about it", "along the deckle"), ("Condition", "creased"));

        Assert.Equal("1 sheet left out. 1 sheet: condition recorded.", house.Message);
        var sheet = house.Sheet(SmallStudio.Pile(1, "6"));
        Assert.Equal(("left-out", "crease", "along the deckle", "creased"), (sheet.Standing, sheet.Fault, sheet.FaultNote, sheet.Condition));
    }

    [Fact]
    public async Task A_sheet_kept_after_all_has_no_fault_any_more()
    {
        await using var house = await TestHouse.OnEmptyAsync();
        house.Register.Unnumbered();
        await house.PressOnAsync(SmallStudio.Pile(1, "7"), "e");
        var given = (house.Form["Standing"], house.Form["Fault"]);

        await house.FillAsync(("Standing", "kept"));

        Assert.Equal(("left-out", "slur"), given);
        Assert.Equal("1 sheet kept.", house.Message);
        Assert.Null(house.Sheet(SmallStudio.Pile(1, "7")).Fault);
    }

    [Fact]
    public async Task Condition_alone_leaves_the_standing_of_different_sheets()
    {
        await using var house = await TestHouse.OnEmptyAsync();
        house.Register.Unnumbered();
        await house.PressOnAsync(SmallStudio.Pile(1, "5-6"), "e");

        await house.FillAsync(("Condition", "foxed"));

        Assert.Equal("2 sheets: condition recorded.", house.Message);
        Assert.Equal(("kept", "spare"), (house.Sheet(SmallStudio.Pile(1, "5")).Standing, house.Sheet(SmallStudio.Pile(1, "6")).Standing));
    }

    [Theory]
    [InlineData("left-out", "", "A sheet is left out for a reason. Nothing was changed. Name the fault: ")]
    [InlineData("left-out", "sadness", "“sadness” is no fault this register knows: write misregistration, slur, ")]
    [InlineData("burnt", "", "Standing is one of kept, spare, left-out, held-out, pulled.")]
    public async Task What_is_not_right_is_said(string standing, string fault, string problem)
    {
        await using var house = await TestHouse.OnEmptyAsync();
        house.Register.Unnumbered();
        await house.PressOnAsync(SmallStudio.Pile(1, "6"), "e");

        await house.FillAsync(("Standing", standing), ("Fault", fault));

        Assert.StartsWith(problem, house.Form.Problem, StringComparison.Ordinal);
        Assert.Equal("spare", house.Sheet(SmallStudio.Pile(1, "6")).Standing);
    }

    [Fact]
    public async Task A_numbered_sheet_stays_kept()
    {
        await using var house = await TestHouse.OnDemoAsync();
        await house.PressOnAsync(Harbour("9"), "e");

        await house.FillAsync(("Standing", "spare"));

        Assert.StartsWith($"{house.Sheet(Harbour("9")).ShownCode} bears the number 9/12 of “Harbour at Low Water”, so it stays a kept sheet. Nothing was changed.", house.Form.Problem, StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_another_window_recorded_meanwhile_is_not_written_over()
    {
        await using var house = await TestHouse.OnDemoAsync();
        await house.PressOnAsync(Harbour("9"), "e");
        house.Register.InscribeImpressions.Run(Harbour("9"), new WhatStandsOnIt { Condition = "thumbed" });

        await house.FillAsync(("Condition", "fine"));

        Assert.Equal(
            $"{house.Sheet(Harbour("9")).ShownCode} was changed while you were looking at it: its condition is now “thumbed”, you wanted “fine”. Nothing was changed. Look at it as it stands and do this again.",
            house.Form.Problem);
    }

    [Fact]
    public async Task Nothing_is_written_where_nothing_is_changed()
    {
        await using var house = await TestHouse.OnDemoAsync();
        var entries = house.Register.LookAround.Head().N;
        await house.PressOnAsync(Harbour("9"), "e");

        await house.FillAsync();

        Assert.Equal("Nothing was changed: that is recorded already.", house.Message);
        Assert.Equal(entries, house.Register.LookAround.Head().N);
    }
}

using EditionRegister.Domain.Editions;
using EditionRegister.Domain.Impressions;
using EditionRegister.Tui.Asking;

namespace EditionRegister.Tui.Tests.PlanChest;

/// <summary>Divided and short editions and words of the register's own, from the tray of an edition.</summary>
public sealed class DivisionAndShortTests
{
    [Fact]
    public async Task A_share_is_added_shown_taken_back_and_undone()
    {
        await using var house = await OnNumberedAsync();
        await house.PressAsync("+", "v", "n");
        await house.FillAsync(("Numbers", "1-3"), ("To whom", "Quay Gallery"), ("Agreed on", "2027-02-01"));
        var added = house.Message;
        var screen = house.Screen();

        await house.PressAsync("t");
        var takenBack = house.Message;
        await house.PressAsync("u");

        Assert.Equal("Edition 1 of “Mole End”: 3 numbers to go to Quay Gallery.", added);
        Assert.Equal(["›", "1/6 to 3/6", "Quay Gallery", "3 belong to Mira Tolland", "2027-02-01"], screen.Split('\n')[^1].Replace("› ", "›  ", StringComparison.Ordinal).Split("  ", StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries));
        Assert.Equal("Edition 1 of “Mole End”: 3 numbers divided no more.", takenBack);
        Assert.Equal("Edition 1 of “Mole End”: 3 numbers to go to Quay Gallery.", house.Message);
        Assert.Equal([(1, 3)], house.Register.LookAround.Edition(1).Edition.Entitlements.Select(one => (one.First, one.Last)));
    }

    [Fact]
    public async Task A_number_promised_already_keeps_the_form_open()
    {
        await using var house = await OnNumberedAsync();
        house.Register.DivideEdition.Run(1, "1-3", "Mira Tolland");
        await house.PressAsync("+", "v", "n");

        await house.FillAsync(("Numbers", "3-4"), ("To whom", "Quay Gallery"));

        Assert.Equal("3/6 of “Mole End” is to go to Mira Tolland already. Nothing was changed. Take that back first with `edreg divide … --take-back`, or name other numbers.", house.Form.Problem);
    }

    [Fact]
    public async Task A_short_edition_is_set_anew_and_what_to_pencil_is_named()
    {
        await using var house = await OnNumberedAsync();
        house.Register.InscribeImpressions.Run(SmallStudio.Numbers(1, "1"), new WhatStandsOnIt { AsSpelled = true });
        var code = house.Register.LookAround.Chosen(SmallStudio.Numbers(1, "1"))[0].Sheets[0].ShownCode;
        await house.PressAsync("+", "e");

        await house.FillAsync(("Why no more were printed", "the block split"));

        Assert.Equal($"Edition 1 of “Mole End” fell short: its size is set anew, 1/5 to 5/5; A/P A/B to A/P B/B. The record of the pencil is cleared on 1 sheet: pencil it anew. They are {code}.", house.Message);
        Assert.Contains("short edition", house.Screen(120, 30), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_kind_is_made_changed_undone_and_declared_with()
    {
        await using var house = await OnNumberedAsync();
        await house.PressAsync("+", "k", "n");
        await house.FillAsync(("Word", "lettered"), ("Mark", "C"), ("Name", "lettered copy"));
        var refused = house.Form.Problem;
        await house.FillAsync(("Mark", "L.C."));
        var made = house.Message;
        await house.PressAsync([.. Enumerable.Repeat("Down", 16), "e"]);
        await house.FillAsync(("For sale by custom", "yes"));
        var changed = house.Message;
        await house.PressAsync("u");

        Assert.Equal("“C” would be read as a number. Nothing was changed. Choose a mark that nothing else is read as.", refused);
        Assert.Equal("Kind lettered made: “L.C.”, lettered copy; not in the size, in the total, not for sale.", made);
        Assert.Equal("Kind lettered changed: “L.C.”, lettered copy; not in the size, in the total, for sale.", changed);
        Assert.Equal("Kind lettered changed: “L.C.”, lettered copy; not in the size, in the total, not for sale.", house.Message);
    }

    [Fact]
    public async Task A_fault_is_added_to_the_list()
    {
        await using var house = await OnNumberedAsync();
        await house.PressAsync("+", "k", "f");

        await house.FillAsync(("Word", "halo"), ("Name", "oil halo"));

        Assert.Equal("Fault halo added: oil halo.", house.Message);
        Assert.Equal("oil halo", house.Register.LookAround.OwnWords().FaultOf("halo")!.Name);
    }

    [Fact]
    public async Task A_technique_is_added_to_the_list()
    {
        await using var house = await OnNumberedAsync();
        await house.PressAsync("+", "k", "t");

        await house.FillAsync(("Word", "plaster-print"), ("Name", "plaster print"));
        var message = house.Message;
        await house.PressAsync("End");

        Assert.Equal("Technique plaster-print added: plaster print. It is read in words from now on.", message);
        Assert.Contains("plaster-print", house.Screen().Split('\n')[^1], StringComparison.Ordinal);
    }

    /// <summary>“Mole End”, declared 1-6 and A/P A-B, five sheets numbered.</summary>
    private static async Task<TestHouse> OnNumberedAsync()
    {
        var house = await TestHouse.OnEmptyAsync();
        house.Register.Unnumbered();
        house.Register.GiveNumbers.AsPiled(1, null, null);
        await house.OpenAsync(1);

        return house;
    }
}

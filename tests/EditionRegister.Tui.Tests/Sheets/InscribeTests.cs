using EditionRegister.Domain.Impressions;
using EditionRegister.Tui.Tests.PlanChest;
using static EditionRegister.Tui.Tests.Sheets.OnSheets;

namespace EditionRegister.Tui.Tests.Sheets;

/// <summary>Recording what stands on sheets.</summary>
public sealed class InscribeTests
{
    [Fact]
    public async Task Sheets_just_numbered_are_inscribed_as_spelled()
    {
        await using var house = await NumberedAsync();
        await house.PressOnAsync(SmallStudio.Numbers(1, "1-5"), "i");
        var (about, asSpelled) = (house.Form.About, house.Form["As spelled above"]);

        await house.FillAsync(("Signed by hand", "yes"), ("Signature", "M. Tolland"));

        Assert.Equal("Spelled: 1/6  ·  Mole End  ·  Mira Tolland; the last 5/6  ·  Mole End  ·  Mira Tolland", about[1]);
        Assert.Equal("yes", asSpelled);
        Assert.Equal("5 sheets inscribed.", house.Message);
        var third = house.Sheet(SmallStudio.Numbers(1, "3"));
        Assert.Equal(("3/6", "Mole End", "yes", "M. Tolland"), (third.Pencilled, third.Titled, third.Signed, third.Signature));
    }

    [Fact]
    public async Task One_sheet_is_corrected_by_what_stands_on_it()
    {
        await using var house = await TestHouse.OnDemoAsync();
        await house.PressOnAsync(Harbour("9"), "i");
        var given = (house.Form["As spelled above"], house.Form["Number"], house.Form["Title"], house.Form["Signature"]);

        await house.FillAsync(("Number", "9/l2"), ("Other text on it", "pour Inés"), ("Its side", "back"), ("Where it stands", "lower left"));

        Assert.Equal(("no", "9/12", "Harbour at Low Water", "M. Tolland"), given);
        Assert.Equal("1 sheet inscribed.", house.Message);
        var sheet = house.Sheet(Harbour("9"));
        Assert.Equal("9/l2", sheet.Pencilled);
        Assert.Equal(("back", "written", "lower left", "pour Inés"), (sheet.Inscriptions[0].Side, sheet.Inscriptions[0].Manner, sheet.Inscriptions[0].Position, sheet.Inscriptions[0].Text));
    }

    [Fact]
    public async Task Nothing_said_is_nothing_inscribed()
    {
        await using var house = await TestHouse.OnDemoAsync();
        await house.PressOnAsync(Harbour("9"), "i");

        await house.FillAsync();

        Assert.Equal(
            "Nothing was said about what stands on the sheet. Nothing was changed. Give --as-spelled, or what you read: --pencilled, --titled, --signature, --signed, --inscription.",
            house.Form.Problem);
    }

    [Fact]
    public async Task What_is_recorded_is_not_emptied()
    {
        await using var house = await TestHouse.OnDemoAsync();
        await house.PressOnAsync(Harbour("9"), "i");

        await house.FillAsync(("Signature", " "));

        Assert.Equal("Signature is needed: as it stands on the sheet; what is recorded can be corrected, not emptied.", house.Form.Problem);
    }

    [Fact]
    public async Task A_sheet_without_a_number_is_not_inscribed_as_spelled()
    {
        await using var house = await TestHouse.OnEmptyAsync();
        house.Register.Unnumbered();
        await house.PressOnAsync(SmallStudio.Pile(1, "1"), "i");
        var about = house.Form.About[1];

        await house.FillAsync(("As spelled above", "yes"));

        Assert.Equal("Spelled: no number yet  ·  Mole End  ·  Mira Tolland", about);
        Assert.StartsWith($"{house.Sheet(SmallStudio.Pile(1, "1")).ShownCode} has no number yet, so there is nothing to spell. Nothing was changed.", house.Form.Problem, StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_another_window_read_on_the_sheet_meanwhile_is_not_written_over()
    {
        await using var house = await TestHouse.OnDemoAsync();
        await house.PressOnAsync(Harbour("9"), "i");
        house.Register.InscribeImpressions.Run(Harbour("9"), new WhatStandsOnIt { Signature = "Tolland" });

        await house.FillAsync(("Signature", "MT"));

        Assert.Equal(
            $"{house.Sheet(Harbour("9")).ShownCode} was changed while you were looking at it: the signature is now “Tolland”, you wanted “MT”. Nothing was changed. Look at it as it stands and do this again.",
            house.Form.Problem);
        Assert.Equal("Tolland", house.Sheet(Harbour("9")).Signature);
    }

    [Fact]
    public async Task As_last_time_takes_the_signature_and_nothing_that_is_one_sheets_own()
    {
        await using var house = await TestHouse.OnDemoAsync();
        await house.PressOnAsync(Harbour("9"), "i");
        await house.FillAsync(("Number", "9 / 12"), ("Signature", "Mira T."), ("Other text on it", "for the fair"));
        await house.PressOnAsync(Harbour("10"), "i");

        house.Form.Fill(house.House.Desk.Answers.Last(house.Form)!, all: false);

        Assert.Equal(("10/12", "Mira T.", null), (house.Form["Number"], house.Form["Signature"], house.Form["Other text on it"]));
    }

    private static async Task<TestHouse> NumberedAsync()
    {
        var house = await TestHouse.OnEmptyAsync();
        var edition = house.Register.Unnumbered();
        house.Register.GiveNumbers.AsPiled(edition, "1-5", null);

        return house;
    }
}

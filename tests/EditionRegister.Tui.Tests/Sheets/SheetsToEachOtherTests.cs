using EditionRegister.Domain.Impressions;
using EditionRegister.Tui.Asking;
using EditionRegister.Tui.Tests.PlanChest;

namespace EditionRegister.Tui.Tests.Sheets;

/// <summary>What is done to a sheet now and then, behind one key: variants, ghosts, dedications and replacements.</summary>
public sealed class SheetsToEachOtherTests
{
    [Fact]
    public async Task A_variant_is_said_and_undone()
    {
        await using var house = await OnNumberedAsync();
        await house.PressAsync("o", "v");

        await house.FillAsync(("How it differs", "wiped in ochre"));
        var said = house.Message;
        await house.PressAsync("u");

        Assert.Equal("1 sheet: “wiped in ochre”.", said);
        Assert.Equal("1 sheet: variant taken back.", house.Message);
        Assert.Null(Sheet(house, "1").Variant);
    }

    [Fact]
    public async Task A_dedication_is_recorded_as_it_stands_there()
    {
        await using var house = await OnNumberedAsync();
        await house.PressAsync("o", "d");

        await house.FillAsync(("Dedication", "for Åsa, with thanks"));

        Assert.Equal("1 sheet: dedicated “for Åsa, with thanks”.", house.Message);
        Assert.Equal("for Åsa, with thanks", Sheet(house, "1").Dedication);
    }

    [Fact]
    public async Task A_ghost_is_recorded_and_the_same_key_takes_it_back()
    {
        await using var house = await OnNumberedAsync();
        var (ghost, print) = (Sheet(house, "1").ShownCode, Sheet(house, "2").ShownCode);
        await house.PressAsync("o", "g");
        await house.FillAsync(("Ghost of", print));
        var recorded = house.Message;

        await house.PressAsync("o", "g");
        var asked = house.Question.Asked;
        await house.PressAsync("y");

        Assert.Equal($"{ghost} recorded as the ghost of {print}.", recorded);
        Assert.Equal($"{ghost} is the ghost of {print}. Was that a mistake?", asked);
        Assert.Equal($"{ghost} is no ghost any more.", house.Message);
    }

    [Fact]
    public async Task The_one_spare_is_proposed_for_a_damaged_sheet()
    {
        await using var house = await OnNumberedAsync();
        var old = Sheet(house, "1").ShownCode;
        await house.PressAsync("o", "r");
        var proposed = house.Form["The spare"];
        await house.FillAsync(("Fault of the old one", "halo"));
        var problem = house.Form.Problem;

        await house.FillAsync(("Fault of the old one", "crease"), ("Date", "2027-02-20"));

        Assert.Equal("“halo” is no fault this register knows: write misregistration, slur, smudge, set-off, under-inked, filled-in, uneven, crease, tear, fingerprint, stain, foul-biting, lint, set-askew, wrong-paper, other.", problem);
        Assert.Equal($"{proposed} takes the place of {old} as 1/6 of “Mole End”.", house.Message);
        Assert.Equal(proposed, Sheet(house, "1").ShownCode);
    }

    [Fact]
    public async Task What_differs_from_sheet_to_sheet_is_asked_of_one()
    {
        await using var house = await OnNumberedAsync();
        await house.PressAsync("Space", "Right", "Space", "o", "r");

        Assert.Equal("Which spare takes the place of a sheet differs from sheet to sheet, so it is recorded for one sheet at a time. Nothing was changed. Choose one sheet, or use --as-spelled for several.", house.Message);
    }

    private static Impression Sheet(TestHouse house, string number) => house.Register.LookAround.Chosen(SmallStudio.Numbers(1, number))[0].Sheets[0];

    /// <summary>“Mole End”, five sheets numbered and a spare; the cursor is on 1/6.</summary>
    private static async Task<TestHouse> OnNumberedAsync()
    {
        var house = await TestHouse.OnEmptyAsync();
        house.Register.Unnumbered();
        house.Register.GiveNumbers.AsPiled(1, null, null);
        await house.OpenAsync(1);

        return house;
    }
}

using EditionRegister.UseCases.Registers;

namespace EditionRegister.Tui.Tests.Welcome;

/// <summary>The settings of the register that is open.</summary>
public sealed class SettingsFormTests
{
    [Fact]
    public async Task What_was_changed_is_told_and_counts_from_then_on()
    {
        await using var house = await TestHouse.OnDemoAsync();
        await house.PressAsync("7", "o");
        Assert.Equal("Saltmarsh Print Studio", house.Form["What it is called"]);

        await house.FillAsync(("Who writes in it", "Mira Tolland"), ("Sizes on documents in", "in"), ("Sizes are written", "cco"), ("Labels down, mm", "-0.5"));

        Assert.Equal("Settings changed; written by: Mira Tolland, person 1; sizes on documents in: in; sizes are written: cco (cm with decimals, inches to the nearest quarter); label printer: labels moved 0 mm to the right and -0.5 mm down.", house.Message);
        Assert.Equal((1, "in", "cco", -0.5), (house.Register.Settings.By, house.Register.Settings.Units, house.Register.Settings.SizeWriting.Word, house.Register.Settings.PrinterOffset.Down));
    }

    [Fact]
    public async Task A_new_name_says_when_it_will_be_seen()
    {
        await using var house = await TestHouse.OnDemoAsync();
        await house.PressAsync("7", "o");

        await house.FillAsync(("What it is called", "Ebb Tide Press"));

        Assert.Equal("Settings changed; called: Ebb Tide Press. The new name is at the top of the screen when the register is opened next.", house.Message);
    }

    [Fact]
    public async Task A_setting_changed_meanwhile_is_refused_with_both_values()
    {
        await using var house = await TestHouse.OnDemoAsync();
        await house.PressAsync("7", "o");
        house.Register.ChangeSettings.Run(new SettingsCorrection { Currency = "GBP" });

        await house.FillAsync(("Currency of your prices", "USD"));

        Assert.Equal("Someone changed the settings while you were looking at them: Currency is now “GBP”, you wanted “USD”. Nothing was changed. Look at them as they stand and do this again.", house.Form.Problem);
        Assert.Equal("GBP", house.Register.Settings.Currency);
    }

    [Theory]
    [InlineData("Labels to the right, mm", "21", "“21” are no millimetres from -20 to 20: write 0.5 or -1.")]
    [InlineData("Labels to the right, mm", "0,5", "“0,5” are no millimetres from -20 to 20: write 0.5 or -1.")]
    [InlineData("Who writes in it", "Nobody", "Nobody called “Nobody” is in the address book. Nothing was changed. Record them first with `edreg person add`, or name them by their number.")]
    public async Task A_wrong_answer_is_told_and_the_file_stays(string label, string typed, string told)
    {
        await using var house = await TestHouse.OnDemoAsync();
        var before = File.ReadAllText(house.Register.Folder.Settings);
        await house.PressAsync("7", "o");

        await house.FillAsync((label, typed));

        Assert.Equal(told, house.Form.Problem);
        Assert.Equal(before, File.ReadAllText(house.Register.Folder.Settings));
    }
}

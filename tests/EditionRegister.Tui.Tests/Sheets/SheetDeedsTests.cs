using EditionRegister.Tui.Sheets;
using static EditionRegister.Tui.Tests.Sheets.OnSheets;

namespace EditionRegister.Tui.Tests.Sheets;

/// <summary>The keys that work wherever sheets lie.</summary>
public sealed class SheetDeedsTests
{
    [Fact]
    public async Task Where_no_sheets_are_chosen_no_key_works()
    {
        await using var house = await TestHouse.OnEmptyAsync();

        Assert.Empty(SheetDeeds.Keys(house.House.Desk, () => null));
    }

    [Fact]
    public async Task Every_key_is_named_shortly_and_explained_in_a_sentence()
    {
        await using var house = await TestHouse.OnDemoAsync();

        var keys = SheetDeeds.Keys(house.House.Desk, () => new ChosenSheets(Harbour("9"), "it"));

        Assert.Equal("smcrapiwdexto", string.Concat(keys.Select(key => key.Key)));
        Assert.All(keys, key => Assert.InRange(key.Does.Length, 1, 18));
        Assert.All(keys, key => Assert.Matches(@"^[A-Z].+\.$", key.Explained!));
    }

    [Theory]
    [InlineData("s")]
    [InlineData("m")]
    [InlineData("c")]
    [InlineData("p")]
    [InlineData("i")]
    [InlineData("e")]
    public async Task A_form_left_half_filled_is_there_again_as_it_was(string key)
    {
        await using var house = await TestHouse.OnDemoAsync();
        await house.PressOnAsync(Harbour("9"), key);
        var typed = house.Form.Fields.First(field => field.Words is null);
        typed.Text = "half typed";

        house.House.LeaveForm(house.Form);
        await house.PressAsync(key);

        Assert.Equal("half typed", house.Form[typed.Label]);
    }
}

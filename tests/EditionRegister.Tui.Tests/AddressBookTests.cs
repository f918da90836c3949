namespace EditionRegister.Tui.Tests;

/// <summary>The address book at work.</summary>
public sealed class AddressBookTests
{
    [Fact]
    public async Task Someone_recorded_is_in_the_list_and_it_is_said()
    {
        await using var house = await TestHouse.OnEmptyAsync();
        await house.PressAsync("7", "n");

        await house.FillAsync(("Name", "Mira Tolland"));

        Assert.Equal("Mira Tolland is in the address book, as person 1.", house.Message);
        Assert.Contains("›  Mira Tolland", house.Screen(), StringComparison.Ordinal);
    }
}

using static EditionRegister.Tui.Tests.Sheets.OnSheets;

namespace EditionRegister.Tui.Tests.Sheets;

/// <summary>Saying what sheets are offered for.</summary>
public sealed class PriceTests
{
    [Fact]
    public async Task Sheets_are_priced_and_it_is_said()
    {
        await using var house = await TestHouse.OnDemoAsync();
        await house.PressOnAsync(Harbour("9-10"), "p");
        var given = (house.Form["Asking price"], house.Form["Currency"], house.Form["For sale"]);

        await house.FillAsync(("Asking price", "210"), ("For sale", "yes"));

        Assert.Equal(("180.00", "EUR", "by-custom"), given);
        Assert.Equal("2 sheets: asking price 210.00 EUR each, for sale yes.", house.Message);
        Assert.Equal((21_000L, "EUR", "yes"), (house.Sheet(Harbour("10")).Asking, house.Sheet(Harbour("10")).AskingCurrency, house.Sheet(Harbour("10")).ForSale));
    }

    [Fact]
    public async Task A_price_is_undone()
    {
        await using var house = await TestHouse.OnDemoAsync();
        await house.PressOnAsync(Harbour("9-10"), "p");
        await house.FillAsync(("Asking price", "210"));

        await house.PressAsync("u");

        Assert.Equal("2 sheets: asking price 180.00 EUR each.", house.Message);
        Assert.Equal(18_000, house.Sheet(Harbour("9")).Asking);
    }

    [Fact]
    public async Task A_first_price_has_nothing_to_go_back_to()
    {
        await using var house = await TestHouse.OnDemoAsync();
        await house.PressOnAsync(Harbour("A/P I"), "p");

        await house.FillAsync(("Asking price", "210"));

        Assert.Equal("1 sheet: asking price 210.00 EUR.", house.Message);
        Assert.Null(house.House.Desk.Undo);
    }

    [Fact]
    public async Task Where_sheets_differ_what_is_not_said_stays()
    {
        await using var house = await TestHouse.OnDemoAsync();
        house.Register.PriceImpressions.Run(Harbour("9"), 30_000, "EUR", "no");
        await house.PressOnAsync(Harbour("9-10"), "p");
        var given = (house.Form["Asking price"], house.Form["For sale"]);

        await house.FillAsync(("For sale", "yes"));

        Assert.Equal((null, "as it is"), given);
        Assert.Equal("2 sheets: for sale yes.", house.Message);
        Assert.Equal((30_000L, 18_000L), (house.Sheet(Harbour("9")).Asking, house.Sheet(Harbour("10")).Asking));
    }

    [Fact]
    public async Task Nothing_is_written_where_all_is_recorded_already()
    {
        await using var house = await TestHouse.OnDemoAsync();
        var entries = house.Register.LookAround.Head().N;
        await house.PressOnAsync(Harbour("9"), "p");

        await house.FillAsync(("Asking price", "180.00"));

        Assert.Equal("Nothing was changed: that is recorded already.", house.Message);
        Assert.Equal(entries, house.Register.LookAround.Head().N);
    }

    [Theory]
    [InlineData("Asking price", "cheap", "“cheap” is no amount in EUR: ")]
    [InlineData("Currency", "euros", "“euros” is no currency the register knows: write three letters, such as EUR, GBP or USD.")]
    [InlineData("For sale", "perhaps", "For sale is one of by-custom, yes, no, unknown.")]
    public async Task What_is_not_right_is_said(string field, string typed, string problem)
    {
        await using var house = await TestHouse.OnDemoAsync();
        await house.PressOnAsync(Harbour("9"), "p");

        await house.FillAsync((field, typed));

        Assert.StartsWith(problem, house.Form.Problem, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_price_that_another_window_changed_meanwhile_is_refused_with_both_values()
    {
        await using var house = await TestHouse.OnDemoAsync();
        await house.PressOnAsync(Harbour("9"), "p");
        house.Register.PriceImpressions.Run(Harbour("9"), 20_000, "EUR", null);

        await house.FillAsync(("Asking price", "210"));

        Assert.Equal(
            $"{house.Sheet(Harbour("9")).ShownCode} was changed while you were looking at it: its asking price is now “200.00 EUR”, you wanted “210.00 EUR”. Nothing was changed. Look at it as it stands and do this again.",
            house.Form.Problem);
        Assert.Equal(20_000, house.Sheet(Harbour("9")).Asking);
    }

    [Fact]
    public async Task Undoing_leaves_a_price_alone_that_another_window_set_since()
    {
        await using var house = await TestHouse.OnDemoAsync();
        await house.PressOnAsync(Harbour("9"), "p");
        await house.FillAsync(("Asking price", "210"));
        house.Register.PriceImpressions.Run(Harbour("9"), 25_000, "EUR", null);

        await house.PressAsync("u");

        Assert.Contains("its asking price is now “250.00 EUR”, you wanted “180.00 EUR”", house.Message, StringComparison.Ordinal);
        Assert.Equal(25_000, house.Sheet(Harbour("9")).Asking);
    }
}

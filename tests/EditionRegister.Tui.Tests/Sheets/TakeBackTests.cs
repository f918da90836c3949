using EditionRegister.Tui.Asking;
using static EditionRegister.Tui.Tests.Sheets.OnSheets;

namespace EditionRegister.Tui.Tests.Sheets;

/// <summary>Taking a last step back.</summary>
public sealed class TakeBackTests
{
    [Fact]
    public async Task What_will_be_taken_back_is_named_first()
    {
        await using var house = await TestHouse.OnDemoAsync();

        await house.PressOnAsync(Harbour("3"), "t", "“Harbour at Low Water” 3/12");

        Assert.Equal("Take the last step of “Harbour at Low Water” 3/12 back?", house.Question.Asked);
        Assert.Equal(
            ["where: handed to its owner, with Inés Vargøy, 2026-06-06", "whose: sold to Inés Vargøy for 180.00 EUR, 2026-06-06"],
            house.Question.Shown.Select(line => line.ToString()));
        Assert.Equal(["b", "m", "s", "n"], house.Question.Answers.Select(answer => answer.Key));
    }

    [Theory]
    [InlineData("b", "1 sheet: last move and transfer taken back.", "in Studio › Plan chest › Drawer 1", "Mira Tolland")]
    [InlineData("m", "1 sheet: last move taken back.", "in Studio › Plan chest › Drawer 1", "Inés Vargøy")]
    [InlineData("s", "1 sheet: last transfer taken back.", "with Inés Vargøy", "Mira Tolland")]
    [InlineData("n", "", "with Inés Vargøy", "Inés Vargøy")]
    public async Task What_is_answered_is_taken_back(string answer, string said, string where, string whose)
    {
        await using var house = await TestHouse.OnDemoAsync();
        await house.PressOnAsync(Harbour("3"), "t");

        await house.PressAsync(answer);

        Assert.Equal(said, house.Message);
        Assert.Equal((where, whose), (house.WhereIs(Harbour("3")), house.WhoseIs(Harbour("3"))));
    }

    [Fact]
    public async Task Of_several_sheets_only_the_steps_that_all_have_are_offered()
    {
        await using var house = await TestHouse.OnDemoAsync();

        await house.PressOnAsync(Harbour("3, 5, 7"), "t");

        Assert.Equal(["m", "n"], house.Question.Answers.Select(answer => answer.Key));
        Assert.Equal(
            ["where: 1 sheet handed to its owner, with Inés Vargøy, 2026-06-06", "where: 2 sheets consigned, with Quay Gallery, 2026-06-06"],
            house.Question.Shown.Select(line => line.ToString()));
    }

    [Fact]
    public async Task A_sheet_with_only_its_first_steps_has_nothing_to_take_back()
    {
        await using var house = await TestHouse.OnDemoAsync();
        var code = house.Sheet(Harbour("9")).ShownCode;

        await house.PressOnAsync(Harbour("9"), "t");

        Assert.Null(house.House.Asking);
        Assert.Equal($"{code} has only the first step of that chain, and that one stays. Nothing was changed. `edreg show {code}` shows both of its chains.", house.Message);
    }

    [Fact]
    public async Task A_step_that_another_window_took_while_it_was_asked_is_not_taken_back()
    {
        await using var house = await TestHouse.OnDemoAsync();
        await house.PressOnAsync(Harbour("5"), "t");
        house.Register.ReturnImpressions.Run(Harbour("5"), "Quay Gallery", "Drawer 2");

        await house.PressAsync("m");

        Assert.Contains("has gone on since you looked: another step is now the last of that chain. Nothing was changed.", house.Message, StringComparison.Ordinal);
        Assert.Equal("in Studio › Plan chest › Drawer 2", house.WhereIs(Harbour("5")));
    }

    [Fact]
    public async Task Esc_changes_nothing()
    {
        await using var house = await TestHouse.OnDemoAsync();
        await house.PressOnAsync(Harbour("3"), "t");
        Assert.IsType<Question>(house.House.Asking);

        await house.PressAsync("Esc");

        Assert.Equal("Nothing was changed.", house.Message);
        Assert.Equal("Inés Vargøy", house.WhoseIs(Harbour("3")));
    }
}

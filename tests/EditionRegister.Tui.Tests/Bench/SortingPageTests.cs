using EditionRegister.Domain.Words;

namespace EditionRegister.Tui.Tests.Bench;

/// <summary>Sorting the dry pulls with one finger.</summary>
public sealed class SortingPageTests
{
    [Fact]
    public async Task Each_key_is_written_at_once_and_moves_to_the_next_sheet()
    {
        await using var house = await SortingAsync();

        await house.PressAsync("k", "s", "x", "s", "Space", "h");

        Assert.Equal(["kept ", "spare ", "left-out slur", "pulled ", "held-out ", "pulled ", "pulled ", "held-out "], Sorted(house));
        Assert.Equal("1 sheet held out.", house.Message);
        BenchScreens.Are(house, "sorting");
        Assert.Empty(house.Bugs);
    }

    [Fact]
    public async Task Backspace_sorts_the_last_ones_back_to_what_each_was()
    {
        await using var house = await SortingAsync();
        await house.PressAsync("x", "m", "Left", "a", "a", "k");
        Assert.Equal("2 sheets kept.", house.Message);

        await house.PressAsync("Backspace");

        Assert.Equal("2 sheets sorted back: left out, pulled again.", house.Message);
        Assert.Equal(["left-out misregistration", "pulled "], Sorted(house).Take(2));
        await house.PressAsync("u");
        Assert.Equal(["left-out misregistration", "pulled "], Sorted(house).Take(2));
        await house.PressAsync("Backspace");
        Assert.Equal("pulled ", Sorted(house)[0]);
        Assert.Empty(house.Bugs);
    }

    [Fact]
    public async Task Sheets_marked_together_are_sorted_together()
    {
        await using var house = await SortingAsync();

        await house.PressAsync("a", "a", "Right", "a");
        Assert.Contains("3 sheets marked: the next key sorts them all.", house.Screen(), StringComparison.Ordinal);
        await house.PressAsync("x", "h");

        Assert.Equal("3 sheets left out.", house.Message);
        Assert.Equal(["left-out other", "left-out other", "pulled ", "left-out other"], Sorted(house).Take(4));
    }

    [Fact]
    public async Task A_sheet_another_window_sorted_meanwhile_is_shown_and_not_sorted_over()
    {
        await using var house = await SortingAsync();
        house.Register.SortPulls.Run(OnTheBench.Pile("1"), "left-out", "crease");

        await house.PressAsync("k");

        Assert.Equal("Someone sorted this meanwhile. Nothing was changed; it is shown as it stands now, so look again.", house.Message);
        Assert.Equal("left-out crease", Sorted(house)[0]);
        Assert.Contains("Sheet 1 of 8", house.Screen(), StringComparison.Ordinal);
        Assert.Contains("left out, crease.", house.Screen(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_numbered_sheet_stays_kept_in_the_register_s_own_words()
    {
        await using var house = await OnTheBench.WithNumbersAsync();
        await house.PressAsync("2", "Enter", "o", "Home");

        await house.PressAsync("s");

        var code = house.Register.LookAround.Work(1).Impressions[0].ShownCode;
        Assert.Equal($"{code} bears the number 1/4 of “Harbour”, so it stays a kept sheet. Nothing was changed. Take its number back first with `edreg number --take-back`, while it is unsigned and here.", house.Message);
    }

    [Fact]
    public async Task A_key_too_many_at_the_end_of_the_pile_sorts_nothing()
    {
        await using var house = await SortingAsync();
        await house.PressAsync("End", "k", "s", "x");

        Assert.Equal("kept ", Sorted(house)[^1]);
        Assert.Contains("The pile is through. Esc goes back, Left looks again, Backspace takes it back.", house.Screen(), StringComparison.Ordinal);
        await house.PressAsync("Left", "s");
        Assert.Equal("spare ", Sorted(house)[^1]);
        await house.PressAsync("Backspace", "Backspace");
        Assert.Equal("held-out ", Sorted(house)[^1]);
    }

    [Fact]
    public async Task Every_fault_has_a_key_of_its_own()
    {
        await using var house = await SortingAsync();

        await house.PressAsync("x");

        var choice = Assert.IsType<EditionRegister.Tui.Asking.Choice>(house.House.Asking);
        Assert.Equal(
            "m misregistration, s slur, u smudge, e set-off, n under-inked, f filled in, v uneven, c crease, t tear, i fingerprint, a stain, o foul biting, l lint, k set askew, w wrong paper, h another fault",
            string.Join(", ", choice.Among.Select(one => $"{one.Key} {one.Shown}")));
    }

    [Fact]
    public async Task A_fault_of_the_registers_own_is_picked_like_the_others()
    {
        await using var house = await OnTheBench.WithPullsAsync();
        house.Register.AddFault.Run(new NewFault("ghosting", "ghosting"));
        await house.PressAsync("2", "Enter", "o", "x");
        var choice = Assert.IsType<EditionRegister.Tui.Asking.Choice>(house.House.Asking);
        Assert.Equal("g ghosting", $"{choice.Among[^1].Key} {choice.Among[^1].Shown}");

        await house.PressAsync("g", "Left");

        Assert.Equal("left-out ghosting", Sorted(house)[0]);
        Assert.Contains("left out, ghosting", house.Screen(), StringComparison.Ordinal);
    }

    private static async Task<TestHouse> SortingAsync()
    {
        var house = await OnTheBench.WithPullsAsync();
        await house.PressAsync("2", "Enter", "o");

        return house;
    }

    private static List<string> Sorted(TestHouse house) => [.. house.Register.LookAround.Work(1).Impressions.Select(sheet => $"{sheet.Standing} {sheet.Fault}")];
}

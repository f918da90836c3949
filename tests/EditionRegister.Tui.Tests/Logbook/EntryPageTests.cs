using EditionRegister.Store.Sqlite;

namespace EditionRegister.Tui.Tests.Logbook;

/// <summary>One entry read whole.</summary>
public sealed class EntryPageTests
{
    [Theory]
    [InlineData(80, 19)]
    [InlineData(120, 35)]
    public async Task An_entry_is_shown_whole(int width, int height)
    {
        await using var house = await TestHouse.OnDemoAsync();
        await house.EnterLogbookAsync();

        await house.PressAsync("Enter");

        ApprovedPage.Is(house.Screen(width, height), "Logbook", $"entry-{width}");
    }

    [Fact]
    public async Task Its_head_stands_in_the_groups_that_its_certificate_prints()
    {
        await using var house = await TestHouse.OnDemoAsync();
        await house.EnterLogbookAsync();
        var issued = Last(house) - 4;
        var head = house.Register.LookAround.Entry(issued)!.Head.Head;

        await house.TurnAsync("Down", "Down", "Down", "Down");
        await house.PressAsync("Enter");

        // Eight digits in a group: README, the certificate of the demo.
        var shown = string.Concat(house.Screen().Split('\n').SkipWhile(line => !line.StartsWith($"Head of 1 to {issued}", StringComparison.Ordinal)).Take(2).Select(line => line[24..] + " "));
        Assert.Equal(string.Join(' ', Enumerable.Range(0, 8).Select(group => head.Substring(group * 8, 8))), shown.Trim());
    }

    [Fact]
    public async Task The_entries_before_and_after_are_a_key_away()
    {
        await using var house = await TestHouse.OnDemoAsync();
        await house.EnterLogbookAsync();
        await house.PressAsync("Enter");
        Assert.DoesNotContain(house.House.Page.Keys, key => key.Key == "Right");

        await house.PressAsync("Left");
        Assert.StartsWith($"Entry       {Last(house) - 1}", house.Screen(), StringComparison.Ordinal);
        await house.PressAsync("Right");

        Assert.StartsWith($"Entry       {Last(house)}", house.Screen(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_was_erased_is_said_to_be_erased()
    {
        await using var house = await TestHouse.OnDemoAsync();
        Tampering.Break(house.Register.Folder, "DELETE FROM sealed WHERE n = (SELECT max(n) FROM sealed)");
        await house.EnterLogbookAsync();

        // The last three entries of the demo seal nothing.
        await house.TurnAsync("Down", "Down", "Down");
        await house.PressAsync("Enter");

        Assert.Contains("  sealed facts          (erased)", house.Screen(80, 60), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_damaged_text_is_said_to_be_damaged()
    {
        await using var house = await TestHouse.OnDemoAsync();
        Tampering.Break(house.Register.Folder, "UPDATE logbook SET body = x'7B2261' WHERE n = (SELECT max(n) FROM logbook)");
        await house.EnterLogbookAsync();

        await house.PressAsync("Enter");

        Assert.Contains("! The text of this entry is damaged and cannot be read:", house.Screen(80, 60), StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_whole_batch_is_listed_with_it()
    {
        await using var house = await TestHouse.OnEmptyAsync();
        house.ReadInList();
        await house.EnterLogbookAsync();

        await house.PressAsync("Enter");

        Assert.EndsWith(
            """
            Written at once with it: 3 entries in the batch
                  2  file read in, batch 1, the file “list.csv”
                  3  file read in, Mira Tolland
                  4  file read in, “Harbour” by Mira Tolland
            """,
            house.Screen(80, 400),
            StringComparison.Ordinal);
    }

    private static long Last(TestHouse house) => house.Register.LookAround.Head().N;
}

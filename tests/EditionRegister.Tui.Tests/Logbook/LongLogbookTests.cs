using EditionRegister.Store.Sqlite;

namespace EditionRegister.Tui.Tests.Logbook;

/// <summary>A logbook far longer than the screen.</summary>
public sealed class LongLogbookTests
{
    [Fact]
    public async Task Every_entry_of_a_few_hundred_comes_by_once_in_its_order()
    {
        await using var house = await TestHouse.OnEmptyAsync();

        for (var count = 2; count <= 320; count++)
        {
            house.Register.RecordPlace.Run($"Drawer {count}", null);
        }

        await house.EnterLogbookAsync();
        List<long> seen = [.. house.NumbersInSight()];

        for (var page = 0; page < 40; page++)
        {
            await house.TurnAsync("PageDown");
            seen.AddRange(house.NumbersInSight());
        }

        Assert.Equal(Enumerable.Range(1, 320).Reverse().Select(n => (long)n), seen.Distinct());
    }

    [Fact]
    public async Task What_is_found_among_many_is_read_on_as_far_as_one_goes()
    {
        await using var house = await TestHouse.OnEmptyAsync();

        for (var count = 2; count <= 320; count++)
        {
            house.Register.RecordPlace.Run($"{(count % 2 == 0 ? "Drawer" : "Shelf")} {count}", null);
        }

        await house.EnterLogbookAsync();
        await house.PressAsync("/");
        await house.TypeAsync("drawer");
        await house.TurnAsync("Enter");
        Assert.EndsWith("1 of more than 100", house.Screen().Split('\n')[1], StringComparison.Ordinal);

        await house.TurnAsync("End");
        await house.TurnAsync("End");

        Assert.EndsWith("160 of 160", house.Screen().Split('\n')[1], StringComparison.Ordinal);
        Assert.Equal(2, house.NumbersInSight()[^1]);
    }

    [Fact]
    public async Task A_row_that_is_not_read_yet_shows_dots_until_it_is()
    {
        await using var house = await TestHouse.OnEmptyAsync();
        FillIn(house);
        await house.EnterLogbookAsync();

        await house.PressAsync("End");
        // The row drawn first: it asks for its block, which may be there before the last row is drawn.
        var before = house.Screen().Split('\n').First(line => line.Contains('…', StringComparison.Ordinal) && !line.Contains("head", StringComparison.Ordinal));
        await house.SettleAsync();

        Assert.Equal("         …  …                 …                         …", before);
        Assert.StartsWith("›        1  2027-03-01 10:00  register made", house.Screen().Split('\n')[^1], StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_hundred_thousand_entries_are_looked_through_from_end_to_end()
    {
        await using var house = await TestHouse.OnEmptyAsync();
        FillIn(house);
        await house.EnterLogbookAsync();
        await house.TurnAsync("End");
        var last = house.NumbersInSight()[^1];
        List<long> middle = [];

        // Further than the blocks that are kept at once, and back again.
        for (var page = 0; page < 120; page++)
        {
            await house.TurnAsync("PageUp");
            middle.AddRange(house.NumbersInSight());
        }

        await house.TurnAsync("Home");

        Assert.Equal(1, last);
        Assert.Equal(middle.Distinct().Count(), middle.Max() - middle.Min() + 1);
        Assert.Equal(100_000, house.NumbersInSight()[0]);
    }

    /// <summary>Entries that nobody wrote: broken, and quickly there.</summary>
    private static void FillIn(TestHouse house) =>
        Tampering.Break(house.Register.Folder, """
            WITH RECURSIVE more(n) AS (SELECT 2 UNION ALL SELECT n + 1 FROM more WHERE n < 100000)
            INSERT INTO logbook (n, at, root, batch, deed, body, leaf, head)
            SELECT n, '2027-03-02T10:00:00.000Z', 'register/1', NULL, 'price', x'7B7D', zeroblob(32), zeroblob(32) FROM more
            """);
}

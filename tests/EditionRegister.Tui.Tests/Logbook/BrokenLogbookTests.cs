using EditionRegister.Store.Sqlite;

namespace EditionRegister.Tui.Tests.Logbook;

/// <summary>A logbook that somebody wrote to behind the program's back.</summary>
public sealed class BrokenLogbookTests
{
    private const string ThirdEntryRewritten = "UPDATE logbook SET body = CAST(replace(CAST(body AS TEXT), '2026', '2025') AS BLOB) WHERE n = 3";

    [Theory]
    [InlineData(80, 19)]
    [InlineData(120, 35)]
    public async Task Says_where_it_is_broken_and_what_to_do(int width, int height)
    {
        await using var house = await TestHouse.OnDemoAsync();
        Tampering.Break(house.Register.Folder, ThirdEntryRewritten);

        await house.EnterLogbookAsync();

        ApprovedPage.Is(house.Screen(width, height), "Logbook", $"broken-{width}");
    }

    [Fact]
    public async Task Names_the_newest_copy_to_go_on_from()
    {
        await using var house = await TestHouse.OnDemoAsync();
        Tampering.Break(house.Register.Folder, ThirdEntryRewritten);
        Directory.CreateDirectory(house.Register.Folder.Backups);
        File.Copy(house.Register.Folder.Database, Path.Combine(house.Register.Folder.Backups, "in-march.db"));

        await house.EnterLogbookAsync();

        Assert.Contains($"The newest copy is {Path.Combine("backups", "in-march.db")}: open it", house.Screen(120).ReplaceLineEndings(" "), StringComparison.Ordinal);
    }

    [Fact]
    public async Task An_entry_that_was_taken_out_has_a_row_that_says_so()
    {
        await using var house = await TestHouse.OnDemoAsync();
        var gone = house.Register.LookAround.Head().N - 2;
        Tampering.Break(house.Register.Folder, $"DELETE FROM logbook WHERE n = {gone}");

        await house.EnterLogbookAsync();

        Assert.Equal($"{gone,10}                    missing                   the logbook has no such…", house.Screen().Split('\n').First(line => line.Contains("missing  ", StringComparison.Ordinal)));
        Assert.Equal([gone + 2, gone + 1, gone, gone - 1], house.NumbersInSight().Take(4));
        Assert.StartsWith($"! The logbook is broken: entry {gone} is missing. Entries 1 to {gone - 1} are sound.", house.Screen(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Checking_again_finds_what_was_broken_meanwhile()
    {
        await using var house = await TestHouse.OnDemoAsync();
        await house.EnterLogbookAsync();
        Tampering.Break(house.Register.Folder, ThirdEntryRewritten);

        await house.TurnAsync("c");

        Assert.StartsWith("! The logbook is broken: entry 3 is not the text its leaf hash was made of.", house.Screen(120), StringComparison.Ordinal);
    }
}

using EditionRegister.Store.Sqlite;
using EditionRegister.Tui.Bench;
using EditionRegister.Tui.PlanChest;
using EditionRegister.Tui.Tests.Logbook;

namespace EditionRegister.Tui.Tests.Findings;

/// <summary>What a check finds, as it is listed.</summary>
public sealed class FindingsPageTests
{
    [Theory]
    [InlineData(80, 19)]
    [InlineData(120, 35)]
    public async Task The_faulty_demo_s_findings_are_listed_the_gravest_first(int width, int height)
    {
        await using var house = await InFindings.OnFaultyAsync();

        await house.EnterFindingsAsync();

        ApprovedPage.Is(house.Screen(width, height), "Findings", $"faulty-{width}");
    }

    [Fact]
    public async Task All_of_the_faulty_demo_s_findings_are_in_the_list()
    {
        await using var house = await InFindings.OnFaultyAsync();

        await house.EnterFindingsAsync();

        ApprovedPage.Is(house.Screen(120, 90), "Findings", "faulty-all");
    }

    [Fact]
    public async Task A_sound_register_has_nothing_to_mend()
    {
        await using var house = await TestHouse.OnDemoAsync();

        await house.EnterFindingsAsync();

        var head = house.Register.LookAround.Head().Head;
        Assert.Equal(
            $"""
            No contradictions, no queries: checked 220 entries, head {head[..8]} {head[8..16]} …
            / finds by title, code, rule, any word
               found            of what                        what is so
            Nothing to mend.
            """,
            house.Screen());
    }

    [Fact]
    public async Task Finds_by_any_word()
    {
        await using var house = await InFindings.OnFaultyAsync();
        await house.EnterFindingsAsync();

        await house.PressAsync("/");
        await house.TypeAsync("perhaps values");
        await house.PressAsync("Enter");

        Assert.Equal("›  ! contradiction  “Tide Table” 2 (F5G3-WYGN)     Signed of “Tide Table” 2 (F5…", house.Screen().Split('\n')[4]);
        Assert.Contains("1 of 1", house.Screen().Split('\n')[2], StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("F5G3-WYGN perhaps values", typeof(ImpressionPage))]
    [InlineData("78KAEM", typeof(EditionPage))]
    [InlineData("EHWUU5", typeof(WorkPage))]
    [InlineData("VB7JKW", typeof(WorkPage))]
    public async Task Enter_opens_the_page_where_it_is_mended_and_Esc_comes_back(string find, Type page)
    {
        await using var house = await InFindings.OnFaultyAsync();
        await house.EnterFindingsAsync();
        await house.PressAsync("/");
        await house.TypeAsync(find);

        await house.PressAsync("Enter", "Enter");
        Assert.IsType(page, house.House.Page);
        await house.PressAsync("Esc");

        Assert.Contains("Found by " + find, house.Screen(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Of_the_file_itself_a_page_says_what_to_do_and_nothing_can_be_accepted()
    {
        await using var house = await InFindings.OnFaultyAsync();
        await house.EnterFindingsAsync();
        Assert.DoesNotContain("a", house.Keys);

        await house.PressAsync("Enter");

        ApprovedPage.Is(house.Screen(80, 24), "Findings", "file-80");
    }

    [Fact]
    public async Task A_logbook_that_was_rewritten_is_among_what_is_found()
    {
        await using var house = await TestHouse.OnDemoAsync();
        Tampering.Break(house.Register.Folder, "UPDATE logbook SET at = '2020-01-01T00:00:00.000Z' WHERE n = 3");

        await house.EnterFindingsAsync();

        Assert.Contains("Rule      LogbookIsUnbroken, about the file itself", house.Screen(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_file_that_cannot_be_read_at_all_is_one_finding()
    {
        await using var house = await TestHouse.OnDemoAsync();
        File.WriteAllText(house.Register.Folder.Database, "This is no database any more, and long enough to be taken for none.");
        File.Delete(house.Register.Folder.Database + "-wal");
        File.Delete(house.Register.Folder.Database + "-shm");

        await house.EnterFindingsAsync();

        Assert.StartsWith("1 contradiction, 0 queries, 0 notes: the logbook cannot be read", house.Screen(), StringComparison.Ordinal);
        Assert.Contains("Rule      FileIsSound, about the file itself", house.Screen(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_was_recorded_meanwhile_is_checked_on_coming_back()
    {
        await using var house = await TestHouse.OnDemoAsync();
        await house.EnterFindingsAsync();
        house.Register.EditWork.Run(1, "Harbor", null, null);

        await house.ReturnAsync();

        Assert.Contains(": checked 221 entries, head ", house.Screen().Split('\n')[0], StringComparison.Ordinal);
        Assert.Contains("and the register now says “Harbor”", house.Screen().ReplaceLineEndings(" "), StringComparison.Ordinal);
    }

    [Fact]
    public async Task C_checks_again_though_nothing_was_recorded()
    {
        await using var house = await TestHouse.OnDemoAsync();
        await house.EnterFindingsAsync();
        Tampering.Break(house.Register.Folder, "UPDATE impression SET asking = 1 WHERE id = 21");

        await house.PressAsync("c");
        await house.CheckedAsync();

        Assert.StartsWith("1 contradiction, 0 queries, 0 notes", house.Screen(), StringComparison.Ordinal);
    }
}

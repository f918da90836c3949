using EditionRegister.Domain.Dates;
using EditionRegister.Domain.Works;
using EditionRegister.UseCases.People;

namespace EditionRegister.Tui.Tests.Bench;

/// <summary>A work's page, its print runs and its forms.</summary>
public sealed class WorkPageTests
{
    [Fact]
    public async Task The_work_stands_whole_with_the_balance_of_its_sheets()
    {
        await using var house = await OnTheBench.WithNumbersAsync();

        await house.PressAsync("2");
        BenchScreens.Are(house, "bench");
        await house.PressAsync("Enter");
        BenchScreens.Are(house, "work");
        await house.PressAsync("Enter");
        BenchScreens.Are(house, "run");
        Assert.Empty(house.Bugs);
    }

    [Fact]
    public async Task The_bench_is_filtered_by_title_and_maker()
    {
        await using var house = await TestHouse.OnDemoAsync();
        await house.PressAsync("2");
        BenchScreens.Are(house, "bench-demo");

        await house.PressAsync("/");
        await house.TypeAsync("gull toll");

        Assert.Contains("Gull Rock", house.Screen(), StringComparison.Ordinal);
        Assert.DoesNotContain("Tide Table", house.Screen(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("1960s", "   as 1960 to 1969 ", "The Ferry Steps")]
    [InlineData("eau-forte 2025", "   as the technique etching; the year 2025 ", "Gull Rock")]
    [InlineData("stenc", "", "Letters I Like")]
    [InlineData("collagraph weathers", "   as the technique collagraph ", "Six Weathers")]
    public async Task The_bench_is_filtered_by_dates_and_techniques_as_they_are_written(string typed, string understood, string title)
    {
        await using var house = await TestHouse.OnDemoAsync();
        await house.PressAsync("2", "/");

        await house.TypeAsync(typed);

        Assert.Contains($"Find: {typed}_{understood}", house.Screen(), StringComparison.Ordinal);
        Assert.Contains(title, house.Screen(), StringComparison.Ordinal);
        Assert.DoesNotContain("Tide Table", house.Screen(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Numbers_are_words_at_the_bench()
    {
        await using var house = await TestHouse.OnDemoAsync();
        await house.PressAsync("2", "/");

        await house.TypeAsync("3/12");

        Assert.Contains("No work is called so or made so, and no maker. Esc shows all.", house.Screen(), StringComparison.Ordinal);
        Assert.DoesNotContain("number 3", house.Screen(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Sheets_that_are_missing_are_said_and_put_right()
    {
        await using var house = await OnTheBench.WithPullsAsync();
        await house.PressAsync("2", "Enter", "f");

        await house.FillAsync(("Sheets started", "13"));
        Assert.Equal("The sheets do not balance: 13 started, less 3 spoiled and 1 unused leaves 9, but 8 are in the pile. Nothing was changed. Count again, and correct the number that is wrong.", house.Form.Problem);
        await house.FillAsync(("Spoiled", "4"));

        Assert.Equal("Print run 1 of “Harbour” put right: 13 started = 1 unused + 4 spoiled + 8 in the pile, 1 of them held out.", house.Message);
        await house.PressAsync("u");
        Assert.Equal("Print run 1 of “Harbour” is as it was before.", house.Message);
        Assert.Equal((12, 3), (house.Register.LookAround.Work(1).Runs[0].Started, house.Register.LookAround.Work(1).Runs[0].Spoiled));
    }

    [Fact]
    public async Task A_correction_another_window_made_first_is_refused_with_both_values()
    {
        await using var house = await OnTheBench.WithPullsAsync();
        await house.PressAsync("2", "Enter", "e");
        house.Register.EditWork.Run(1, "Harbour at Dawn", null, null);

        await house.FillAsync(("Title", "Harbour at Night"));

        Assert.Equal("Someone changed this while you were looking at it: title is now “Harbour at Dawn”, you wanted “Harbour at Night”. Nothing was changed. Look at it as it stands and do this again.", house.Form.Problem);
    }

    [Fact]
    public async Task A_run_another_window_put_right_first_is_not_overwritten()
    {
        await using var house = await OnTheBench.WithPullsAsync();
        await house.PressAsync("2", "Enter", "f");
        house.Register.EditPrintRun.Run(1, 1, new Domain.Works.PrintRunCorrection { Paper = "gampi" });

        await house.FillAsync(("Paper", "kozo"));

        Assert.Equal("Someone changed this while you were looking at it: paper is now “gampi”, you wanted “kozo”. Nothing was changed. Look at it as it stands and do this again.", house.Form.Problem);
        Assert.Equal("gampi", house.Register.LookAround.Work(1).Runs[0].Paper);
    }

    [Fact]
    public async Task A_correction_is_undone()
    {
        await using var house = await OnTheBench.WithPullsAsync();
        await house.PressAsync("2", "Enter", "e");
        await house.FillAsync(("Title", "Harbour at Night"), ("Year", "2025"));
        Assert.Equal("Work 1, “Harbour at Night”, put right: title, year.", house.Message);

        await house.PressAsync("u");

        Assert.Equal("“Harbour” is as it was before.", house.Message);
        Assert.Equal(("Harbour", "2026"), (house.Register.LookAround.Work(1).Title, house.Register.LookAround.Work(1).Year.Text));
    }

    [Fact]
    public async Task The_fate_of_the_block_is_stated_with_a_caution_and_can_be_taken_back()
    {
        await using var house = await OnTheBench.WithPullsAsync();
        await house.PressAsync("2", "Enter", "Down", "f");
        Assert.StartsWith("What was cancelled", house.Form.Caution, StringComparison.Ordinal);

        await house.FillAsync(("What became of it", "cancelled"), ("Date", "2026-03-01"));

        Assert.Equal("Block 1 of “Harbour”: cancelled, 2026-03-01.", house.Message);
        await house.PressAsync("u");
        Assert.Equal("undecided", house.Register.LookAround.Work(1).Matrices[0].Fate);
    }

    [Fact]
    public async Task People_who_had_a_part_are_named_and_new_ones_recorded()
    {
        await using var house = await OnTheBench.WithPullsAsync();
        await house.PressAsync("2", "Enter", "j");

        await house.FillAsync(("What they did", "printer"), ("Who", "Joost Averink; Ada Brook"));
        Assert.Equal("Nobody called “Joost Averink” is in the address book. Nothing was changed. Record them first with `edreg person add`, or name them by their number.", house.Form.Problem);
        await house.FillAsync(("They are", "new"));

        Assert.Equal("2 people named for “Harbour”.", house.Message);
        Assert.Contains("Mira Tolland; printer Joost Averink; printer Ada Brook", house.Screen(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("", "as given", "Mira Tolland", "known", "A work needs a title, or the word that says why it has none. Nothing was changed. Type the title, or choose untitled or not known.")]
    [InlineData("Harbour", "as given", "", "new", "A work needs its maker, or the word that nobody knows. Nothing was changed. Type who made it, or choose not known.")]
    [InlineData("Harbour", "as given", "Nobody Here", "known", "Nobody called “Nobody Here” is in the address book. Nothing was changed. Record them first with `edreg person add`, or name them by their number.")]
    public async Task What_a_work_lacks_is_said_and_nothing_recorded(string title, string titleIs, string makers, string makersAre, string said)
    {
        await using var house = await TestHouse.OnEmptyAsync();
        await house.PressAsync("2", "n");

        await house.FillAsync(("Title", title), ("The title is", titleIs), ("Makers", makers), ("The makers are", makersAre));

        Assert.Equal(said, house.Form.Problem);
        Assert.Empty(house.Register.LookAround.Works());
        Assert.Empty(house.Register.LookAround.Book().People);
    }

    [Fact]
    public async Task A_pupil_recorded_with_a_work_is_protected()
    {
        await using var house = await TestHouse.OnEmptyAsync();
        await house.PressAsync("2", "n");

        await house.FillAsync(("Title", "Fox"), ("Makers", "Tam Birdseye"), ("The makers are", "new, a pupil"));

        Assert.True(house.Register.LookAround.Book().People[1].IsProtected);
    }

    [Fact]
    public async Task Text_of_others_stands_in_its_columns_and_commands_nothing()
    {
        await using var house = await TestHouse.OnEmptyAsync();
        house.Register.RecordPerson.Run(new NewPerson { Name = "山田 花子" });
        house.Register.RecordWork.Run(new NewWork { Title = "波\u001b[31m \u202Eבית e\u0301", Year = RecordedDate.Read("2026") }, ["山田 花子"]);

        await house.PressAsync("2");
        BenchScreens.Are(house, "bench-of-others");
        await house.PressAsync("Enter");

        BenchScreens.Are(house, "work-of-others");
        Assert.Empty(house.Bugs);
    }
}

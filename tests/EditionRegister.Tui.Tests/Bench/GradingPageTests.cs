using EditionRegister.Domain.Impressions;

namespace EditionRegister.Tui.Tests.Bench;

/// <summary>Grading a pile with one hand, and the proposal that comes of it.</summary>
public sealed class GradingPageTests
{
    [Fact]
    public async Task Five_keys_grade_a_sheet_and_the_next_one_comes_by_itself()
    {
        await using var house = await GradingAsync();

        await house.PressAsync("b", "g", "g", "f", "d", "Space", "s");
        Assert.Equal("1 sheet graded: registration 5, inking 4, edges 3, likeness 2.", house.Message);
        await house.PressAsync("g", "a");

        Assert.Equal("5 4 3 – 2", GradeShown(house, 0));
        Assert.Equal("– – – – –", GradeShown(house, 1));
        Assert.Equal("guide-sheet", house.Register.LookAround.Work(1).Impressions[0].Grade!.Against);
        BenchScreens.Are(house, "grading");
        Assert.Empty(house.Bugs);
    }

    [Fact]
    public async Task One_sheet_is_one_entry_of_the_logbook()
    {
        await using var house = await GradingAsync();
        var before = house.Register.LookAround.Head().N;

        await house.PressAsync("g", "g", "g", "g");
        Assert.Equal(before, house.Register.LookAround.Head().N);
        await house.PressAsync("g");

        Assert.Equal(before + 1, house.Register.LookAround.Head().N);
    }

    [Fact]
    public async Task Enter_gives_the_rest_as_on_the_sheet_before()
    {
        await using var house = await GradingAsync();

        await house.PressAsync("g", "f", "g", "g", "f", "d", "Enter", "Enter");

        Assert.Equal(["5 4 5 5 4", "3 4 5 5 4", "3 4 5 5 4"], [GradeShown(house, 0), GradeShown(house, 1), GradeShown(house, 2)]);
    }

    [Fact]
    public async Task Going_back_writes_what_was_given_and_a_mark_given_again_replaces_it()
    {
        await using var house = await GradingAsync();

        await house.PressAsync("s", "Esc");
        Assert.Equal("2 – – – –", GradeShown(house, 0));
        await house.PressAsync("Home", "g", "f", "Right", "Left", "Down", "d", "Right");

        Assert.Equal("4 3 – – –", GradeShown(house, 0));
    }

    [Fact]
    public async Task Undo_grades_it_as_it_was_before()
    {
        await using var house = await GradingAsync();
        await house.PressAsync("g", "g", "g", "g", "g", "Left", "a", "Right");
        Assert.Equal("1 5 5 5 5", GradeShown(house, 0));

        await house.PressAsync("u");

        Assert.Equal("Sheet 1 is graded as it was before.", house.Message);
        Assert.Equal("5 5 5 5 5", GradeShown(house, 0));
    }

    [Fact]
    public async Task A_mark_another_window_gave_meanwhile_is_not_written_over()
    {
        await using var house = await GradingAsync();
        house.Register.GradeSheets.Run(OnTheBench.Pile("1"), Marked(GradeAspect.Registration, 2));

        await house.PressAsync("g", "Right");

        var code = house.Register.LookAround.Work(1).Impressions[0].ShownCode;
        Assert.Equal($"{code} was changed while you were looking at it: the mark for registration is now 2, you wanted 5. Nothing was changed. Look at it as it stands and do this again.", house.Message);
        Assert.Equal("2 – – – –", GradeShown(house, 0));
    }

    [Fact]
    public async Task Past_the_last_sheet_no_key_marks()
    {
        await using var house = await GradingAsync();

        await house.PressAsync([.. Enumerable.Repeat("Right", 9), "g"]);

        Assert.Contains("The pile is through.", house.Screen(), StringComparison.Ordinal);
        await house.PressAsync("Left", "g", "Left");
        Assert.Equal("5 – – – –", GradeShown(house, 7));
    }

    [Fact]
    public async Task The_proposal_sorts_nothing_until_y_and_the_pile_shows_what_it_kept()
    {
        await using var house = await SortingAsync();
        house.Register.GradeSheets.Run(OnTheBench.Pile("1-6"), Grade(5, 4, 5, 5, 5));
        house.Register.GradeSheets.Run(OnTheBench.Pile("3"), Grade(2, 2, 2, 2, 2));
        await house.PressAsync("Esc", "o", "p");

        await house.FillAsync(("Sheets to keep", "4"));
        Assert.Equal("Nothing is sorted yet.", house.Message);
        BenchScreens.Are(house, "proposal");
        Assert.All(house.Register.LookAround.Work(1).Impressions.Take(7), sheet => Assert.Equal("pulled", sheet.Standing));
        await house.PressAsync("y");

        Assert.Equal(["kept", "kept", "pulled", "kept", "kept", "pulled", "pulled", "held-out"], house.Register.LookAround.Work(1).Impressions.Select(sheet => sheet.Standing));
        Assert.Equal("4 sheets of print run 1 of “Harbour” kept as proposed: sheets 1-2, 4-5 of the pile. The others stay as they were sorted.", house.Message);
        BenchScreens.Are(house, "sorting-graded");
        await house.PressAsync("u");
        Assert.Equal("pulled", house.Register.LookAround.Work(1).Impressions[0].Standing);
        Assert.Empty(house.Bugs);
    }

    [Fact]
    public async Task More_than_there_are_is_refused_in_the_form()
    {
        await using var house = await SortingAsync();
        house.Register.GradeSheets.Run(OnTheBench.Pile("1"), Grade(5, 4, 5, 5, 5));
        await house.PressAsync("Esc", "o", "p");

        await house.FillAsync(("Sheets to keep", "9"));

        Assert.Equal(
            "9 sheets cannot be proposed: print run 1 of “Harbour” has 7 that may still be kept and have no number. Nothing was changed. Ask for fewer; sheets left out or held out are sorted back first with `edreg sort`.",
            house.Form.Problem);
    }

    private static async Task<TestHouse> SortingAsync()
    {
        var house = await OnTheBench.WithPullsAsync();
        await house.PressAsync("2", "Enter", "o");

        return house;
    }

    private static async Task<TestHouse> GradingAsync()
    {
        var house = await SortingAsync();
        await house.PressAsync("g");

        return house;
    }

    private static string GradeShown(TestHouse house, int sheet) => UseCases.Wording.GradeShown.Marks(house.Register.LookAround.Work(1).Impressions[sheet].Grade);

    private static GradeGiven Marked(GradeAspect aspect, int mark) => new() { Marks = new Dictionary<GradeAspect, int> { [aspect] = mark } };

    private static GradeGiven Grade(params IReadOnlyList<int> marks) => new() { Marks = GradeAspect.All.Zip(marks).ToDictionary(pair => pair.First, pair => pair.Second) };
}

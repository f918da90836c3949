using EditionRegister.Domain.Dates;
using EditionRegister.Domain.Passes;
using EditionRegister.Domain.Works;
using EditionRegister.UseCases.Passes;

namespace EditionRegister.Tui.Tests.Bench;

/// <summary>A run under way on the bench: its passes, its blocks, the pile that is laid, and the rack.</summary>
public sealed class PassesTests
{
    [Fact]
    public async Task The_passes_of_a_run_stand_on_its_page_a_line_each()
    {
        await using var house = await TestHouse.OnDemoAsync();

        await house.PressAsync("2", "/");
        await house.TypeAsync("groynes");
        await house.PressAsync("Enter", "Enter", "Enter");

        BenchScreens.Are(house, "run-with-passes");
        Assert.Empty(house.Bugs);
    }

    [Fact]
    public async Task A_block_stands_with_its_states_its_place_and_its_passes()
    {
        await using var house = await TestHouse.OnDemoAsync();

        await house.PressAsync("2", "/");
        await house.TypeAsync("groynes");
        await house.PressAsync("Enter", "Enter", "Down", "Enter");

        BenchScreens.Are(house, "block");
        Assert.Empty(house.Bugs);
    }

    // 12 at hand, 1 spoiled: 11. The same again with another ink: 11 in, 11 out.
    [Fact]
    public async Task A_pass_is_done_again_with_another_ink_in_one_dialog()
    {
        await using var house = await UnderWayAsync();
        await house.PressAsync("2", "Enter", "p");
        await house.FillAsync(("Printed from", "1"), ("Colours", "red"), ("Ink", "oil ink"), ("Sheets out", "11"), ("Spoiled", "slur=1"), ("Who", "Mira Tolland"));
        Assert.Equal("Pass 1 of print run 1 of “Harbour” recorded: red (oil ink), block 1 · 12 in, 11 out, 1 slur. 11 sheets at hand.", house.Message);

        await house.PressAsync("p");
        house.Form.Fill(house.House.Desk.Answers.Last(house.Form)!, all: false);
        Assert.Equal(("1", "red", "oil ink", "Mira Tolland", "", ""), (house.Form["Printed from"], house.Form["Colours"], house.Form["Ink"], house.Form["Who"], house.Form["Sheets out"] ?? "", house.Form["Spoiled"] ?? ""));
        await house.FillAsync(("Ink", "oil ink, warmer"), ("Sheets out", "11"));

        Assert.Equal("Pass 2 of print run 1 of “Harbour” recorded: red (oil ink, warmer), block 1 · 11 in, 11 out. 11 sheets at hand.", house.Message);
        await house.PressAsync("u");
        Assert.Equal("Pass 2 of print run 1 of “Harbour” taken back: 11 sheets at hand again.", house.Message);
        Assert.Single(house.Register.LookAround.Work(1).Runs[0].Passes);
    }

    [Fact]
    public async Task As_last_time_is_the_last_pass_on_record_also_after_the_program_was_started_anew()
    {
        await using var house = await UnderWayAsync();
        house.Register.RecordPass.Run(1, 1, new PassTyped { Words = new PassWords { SheetsOut = 12, Manner = "blend" }, Colours = ["blue", "grey"], Matrices = ["1"] });

        await house.PressAsync("2", "Enter", "p");
        house.Form.Fill(house.House.Desk.Answers.Last(house.Form)!, all: false);

        Assert.Equal(("blue; grey", "blend", "1"), (house.Form["Colours"], house.Form["They stand"], house.Form["Printed from"]));
    }

    [Fact]
    public async Task A_pass_that_does_not_balance_stays_open_with_the_arithmetic()
    {
        await using var house = await UnderWayAsync();
        await house.PressAsync("2", "Enter", "p");

        await house.FillAsync(("Sheets out", "11"), ("Spoiled", "slur=3"));

        Assert.Equal("Pass 1 does not balance: 12 in and 0 added makes 12, and more are said to have come of it: 11 out, 3 spoiled. Nothing was changed. Count again; sheets that joined late are given as added.", house.Form.Problem);
        Assert.Empty(house.Register.LookAround.Work(1).Runs[0].Passes);
    }

    [Fact]
    public async Task A_pass_another_window_put_right_first_is_not_overwritten()
    {
        await using var house = await UnderWayAsync();
        house.Register.RecordPass.Run(1, 1, new PassTyped { Words = new PassWords { SheetsOut = 12 }, Colours = ["blue"] });
        await house.PressAsync("2", "Enter", "Enter", "Enter");
        house.Register.EditPass.Run(1, 1, 1, new PassTyped { Words = new PassWords { Name = "sky" } });

        await house.FillAsync(("Called", "water"));

        Assert.Equal("Someone changed this while you were looking at it: name is now “sky”, you wanted “water”. Nothing was changed. Look at it as it stands and do this again.", house.Form.Problem);
    }

    [Fact]
    public async Task A_pass_is_put_right_where_only_the_ink_was_mistyped()
    {
        await using var house = await UnderWayAsync();
        house.Register.RecordPass.Run(1, 1, new PassTyped { Words = new PassWords { SheetsOut = 11 }, Colours = ["blue=oil"], Spoiled = ["tear=1"] });
        await house.PressAsync("2", "Enter", "Enter", "Enter");

        await house.FillAsync(("Ink", "oil ink"));

        Assert.Equal("Pass 1 of print run 1 of “Harbour” put right: blue (oil ink) · 12 in, 11 out, 1 tear. 11 sheets at hand.", house.Message);
    }

    // 12 started, 1 spoiled in the pass, 1 held out: 10 + 1 = 11 in the pile, and 0 + 1 + 11 = 12.
    [Fact]
    public async Task The_pile_is_laid_after_the_last_pass_and_lies_on_the_rack_until_it_is_dry()
    {
        await using var house = await UnderWayAsync();
        house.Register.RecordPass.Run(1, 1, new PassTyped { Words = new PassWords { SheetsOut = 10 }, Spoiled = ["tear=1"], HeldOut = ["state=1"] });
        await house.PressAsync("2", "Enter", "Enter", "l");

        await house.FillAsync(("Unused", "0"), ("Dry from", "2027-03-04"));

        Assert.Equal("The pile of print run 1 of “Harbour” is laid: 12 started = 0 unused + 1 spoiled + 11 in the pile, 1 of them held out.", house.Message);
        await house.PressAsync("o");
        Assert.Equal("By the rack they are ready in 3 days (2027-03-04): look that nothing sets off.", house.Message);
        await house.PressAsync("Esc", "Esc", "Esc", "k");
        BenchScreens.Are(house, "rack");
        Assert.Empty(house.Bugs);
    }

    [Fact]
    public async Task A_state_is_recorded_and_the_same_one_again_refused()
    {
        await using var house = await OnTheBench.WithPullsAsync();
        await house.PressAsync("2", "Enter", "Down", "Enter", "n");
        await house.FillAsync(("State", "I"), ("Reached", "2026-02-01"), ("Note", "sky cleared"));
        Assert.Equal("Block 1 of “Harbour”: state I recorded, reached 2026-02-01.", house.Message);

        await house.PressAsync("n");
        await house.FillAsync(("State", "I"));

        Assert.Equal("State I of block 1 is on record already (2026-02-01). Nothing was changed. Name the new state otherwise, or look at the states with `edreg matrix list`.", house.Form.Problem);
    }

    [Fact]
    public async Task A_block_is_moved_to_a_new_place()
    {
        await using var house = await OnTheBench.WithPullsAsync();
        await house.PressAsync("2", "Enter", "Down", "Enter", "e");

        await house.FillAsync(("Place", "Studio › Block shelf"), ("That place is", "new"), ("Part of the image", "key"));

        Assert.Equal("Block 1 (key) of “Harbour” put right; it lies in Studio › Block shelf.", house.Message);
        Assert.Contains("Studio › Block shelf", house.Screen(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task An_empty_rack_says_so()
    {
        await using var house = await TestHouse.OnEmptyAsync();

        await house.PressAsync("2", "k");

        Assert.Contains("Nothing lies on the rack: every pull is sorted.", house.Screen(), StringComparison.Ordinal);
    }

    // The figures are those of the tests of SheetsToStart: 26 for 20 good ones through 4 passes that keep 97 in 100.
    [Fact]
    public async Task A_plan_is_a_page_to_read()
    {
        await using var house = await TestHouse.OnEmptyAsync();
        await house.PressAsync("2", "p");
        await house.FillAsync(("Good sheets wanted", "20"), ("Passes", "4"), ("A pass keeps", ""));
        Assert.Equal("What share of the sheets a pass keeps is not given, and no pass of this register has its sheets counted yet. Nothing was changed. Say what a pass keeps, in per cent, such as 97; on the command line with --keep.", house.Form.Problem);

        await house.FillAsync(("A pass keeps", "97"), ("Full sheet", "560x760"), ("Piece to print on", "280x380"));

        Assert.Equal("Start 26 sheets to be 95 % sure.", house.Message);
        BenchScreens.Are(house, "plan");
    }

    private static async Task<TestHouse> UnderWayAsync()
    {
        var house = await TestHouse.OnEmptyAsync();
        house.Register.RecordPerson.Run(new UseCases.People.NewPerson { Name = "Mira Tolland" });
        house.Register.RecordWork.Run(new NewWork { Title = "Harbour" }, ["Mira Tolland"]);
        house.Register.RecordMatrix.Run(1, "block", "linoleum", "no", RecordedDate.None);
        house.Register.RecordPrintRun.Run(1, new NewPrintRun { IsUnderWay = true, Started = 12 });

        return house;
    }
}

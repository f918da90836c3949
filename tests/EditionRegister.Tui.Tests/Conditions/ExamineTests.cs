using EditionRegister.Tui.Conditions;

namespace EditionRegister.Tui.Tests.Conditions;

/// <summary>Examining sheets of the demo; 10/12 of “Harbour at Low Water” was lent and came back damaged.</summary>
public sealed class ExamineTests
{
    [Theory]
    [InlineData(80, 19)]
    [InlineData(120, 35)]
    public async Task The_reports_of_a_sheet_are_read_newest_first(int width, int height)
    {
        await using var house = await OnTheLentSheetAsync();

        await house.PressAsync("o", "c");

        Assert.IsType<ConditionPage>(house.House.Page);
        ApprovedScreen.Is(house.Screen(width, height), $"reports-{width}", "Conditions");
    }

    [Fact]
    public async Task The_page_of_the_sheet_says_what_is_new()
    {
        await using var house = await OnTheLentSheetAsync();

        Assert.Contains(
            "New since it went out (report 1, 2026-10-02): handling crease, upper left: 40 mm, soft; dented corner, lower right: 3\nmm.", house.Screen(120, 60), StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_remarks_of_the_report_before_stand_there_and_the_new_report_is_said()
    {
        await using var house = await OnTheLentSheetAsync();

        await house.PressAsync("x");
        Assert.Equal("handling-crease@upper left: 40 mm, soft", house.Form["Remark 2"]);
        await house.FillAsync(("Remark 1", ""), ("In short", "flattened by the conservator"), ("Condition from now", "handling crease, flattened"));

        Assert.Equal("1 sheet examined at rest, 2027-03-01: flattened by the conservator; 2 remarks.", house.Message);
        Assert.Equal("handling crease, flattened", Sheet(house).Condition);
        Assert.Equal(["handling-crease", "dented-corner"], Sheet(house).ConditionReports[^1].Remarks.Select(remark => remark.Term));
    }

    [Fact]
    public async Task Mould_says_what_to_do_at_once()
    {
        await using var house = await OnTheLentSheetAsync();

        await house.PressAsync("x");
        await house.FillAsync(("Remark 4", "mould@back, along the top edge"));

        Assert.EndsWith("Mould spreads and harms lungs: put the sheet apart from all others, touch it only with gloves and a mask, and ask a conservator.", house.Message, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_term_nobody_knows_keeps_the_form_open()
    {
        await using var house = await OnTheLentSheetAsync();

        await house.PressAsync("x");
        await house.FillAsync(("Remark 1", "wormwood"));

        Assert.StartsWith("“wormwood” is no term this register knows.", house.Form.Problem, StringComparison.Ordinal);
        Assert.Equal(2, Sheet(house).ConditionReports.Count);
    }

    [Fact]
    public async Task A_word_of_ones_own_is_added_where_words_are_explained()
    {
        await using var house = await OnTheLentSheetAsync();
        await house.PressAsync("o", "c", "v", "n");

        await house.FillAsync(("Word", "frame-rub"), ("Name", "rubbed by the frame"));

        Assert.Equal("rubbed by the frame is a term of this register from now on: frame-rub.", house.Message);
        await house.PressAsync("/");
        await house.TypeAsync("frame");
        Assert.Contains("frame-rub", house.Screen(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_report_is_written_as_a_paper_to_sign()
    {
        await using var house = await OnTheLentSheetAsync();
        var file = house.Register.Folder.FullPath + "/condition.txt";
        await house.PressAsync("o", "c", "f");

        await house.FillAsync(("Report", "1"), ("File", file));

        Assert.Equal($"Condition report written: {file}.", house.Message);
        Assert.StartsWith("Condition report, going out\nSaltmarsh Print Studio\n", await File.ReadAllTextAsync(file), StringComparison.Ordinal);
    }

    private static Domain.Impressions.Impression Sheet(TestHouse house) => house.Register.LookAround.Works()[0].Impressions.First(sheet => sheet.Pencilled == "10/12");

    private static async Task<TestHouse> OnTheLentSheetAsync()
    {
        var house = await TestHouse.OnDemoAsync();
        await house.House.Desk.Store.Idle();
        house.House.Here.Open(new Tui.PlanChest.ImpressionPage(house.House.Desk, Sheet(house).ShownCode));
        await house.House.Page.RefreshAsync();

        return house;
    }
}

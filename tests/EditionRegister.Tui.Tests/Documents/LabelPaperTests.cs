using System.Text;
using System.Text.RegularExpressions;
using EditionRegister.Tui.Tests.PlanChest;

namespace EditionRegister.Tui.Tests.Documents;

/// <summary>Labels: where they begin, how many sheets they need, what each says.</summary>
public sealed partial class LabelPaperTests
{
    [Theory]
    [InlineData(80, 19)]
    [InlineData(120, 35)]
    public async Task Where_they_begin_is_pointed_at_in_a_drawing_of_the_sheet(int width, int height)
    {
        await using var house = await TestHouse.OnDemoAsync();
        await house.PickAsync("gull", "1-8");
        await house.MakeAsync("l");

        await house.PressAsync("b", "Down", "Right", "Up", "Up", "Down");

        ApprovedScreen.Is(house.Shown(width, height), $"first-label-{width}", "Documents");
    }

    [Fact]
    public async Task The_place_stays_on_the_sheet_and_is_taken_with_Enter()
    {
        await using var house = await TestHouse.OnDemoAsync();
        await house.PickAsync("gull", "1-8");
        await house.MakeAsync("l");

        await house.PressAsync("b", "Up", "Left", "End", "Right", "Down", "Enter");

        Assert.Contains("First label     24: 23 labels before it used already", house.Screen(), StringComparison.Ordinal);
        Assert.Contains("8 labels: 2 sheets of a4-3x8, from position 24; 17 places left on the last.", house.Screen(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Esc_leaves_the_place_as_it_was()
    {
        await using var house = await TestHouse.OnDemoAsync();
        await house.PickAsync("gull", "1-8");
        await house.MakeAsync("l");

        await house.PressAsync("b", "End", "Esc");

        Assert.Contains("First label     1: a whole sheet", house.Screen(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Another_label_sheet_begins_whole()
    {
        await using var house = await TestHouse.OnDemoAsync();
        await house.PickAsync("gull", "1-8");
        await house.MakeAsync("l");
        await house.PressAsync("b", "End", "Enter");

        await house.PressAsync("l", "Up", "Up", "Up", "Enter");

        Assert.Contains("Label sheet     a4-2x7: 2 across and 7 down, 99.1 × 38.1 mm, on A4", house.Screen(), StringComparison.Ordinal);
        Assert.Contains("8 labels: 1 sheet of a4-2x7, from position 1; 6 places left on it.", house.Screen(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task As_many_pages_are_written_as_were_counted()
    {
        await using var house = await TestHouse.OnDemoAsync();
        await house.PressAsync("5", "s", "a");
        await house.MakeAsync("l");
        await house.PressAsync("b", "Right", "Right", "Right", "Enter");
        var counted = house.Screen();

        await house.PressAsync("w");

        // 108 sheets are in the demo, four of them left out; 3 places used and 104 labels leave 13 of 120.
        Assert.Contains("104 labels: 5 sheets of a4-3x8, from position 4; 13 places left on the last.", counted, StringComparison.Ordinal);
        Assert.Equal("104 labels on 5 sheets.", house.Message);
        Assert.Equal(5, PdfPage().Count(Encoding.Latin1.GetString(await File.ReadAllBytesAsync(house.Exported("labels.pdf"), TestContext.Current.CancellationToken))));
        Assert.Contains("The next labels can begin at position 12 of the last sheet.", house.Screen().Replace('\n', ' '), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(80, 19)]
    [InlineData(120, 35)]
    public async Task A_label_is_read_before_it_is_written_with_its_place_on_the_sheet(int width, int height)
    {
        await using var house = await TestHouse.OnDemoAsync();
        await house.PressAsync("5", "s", "a");
        await house.MakeAsync("l");

        await house.PressAsync("p", "Right", "Right", "Left");

        ApprovedScreen.Is(house.Shown(width, height), $"label-{width}", "Documents");
        Assert.False(File.Exists(house.Exported("labels.pdf")));
    }

    [Fact]
    public async Task From_the_preview_they_are_written_and_the_page_says_where()
    {
        await using var house = await TestHouse.OnDemoAsync();
        await house.PickAsync("gull", "1-8");
        await house.MakeAsync("l");

        await house.PressAsync("p", "w");

        Assert.Equal(
            """
            8 labels on 1 sheet.

            The file:
            /register/exports/labels.pdf

            Print at 100 %, not fitted to the page. Labels go on folder, sleeve, mat or
            backing, never on the sheet: `edreg pencil` spells what is pencilled there. The
            next labels can begin at position 9 of the last sheet.
            """,
            house.Shown());
        Assert.True(File.Exists(house.Exported("labels.pdf")));
    }

    // As ISO 32000-1, 7.7.3.3 has it; the tree of pages is called /Pages.
    [GeneratedRegex(@"/Type\s*/Page\b(?!s)")]
    private static partial Regex PdfPage();
}

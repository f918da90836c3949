using EditionRegister.Domain.Shows;
using EditionRegister.Tui.Tests.PlanChest;
using EditionRegister.UseCases.Choosing;

namespace EditionRegister.Tui.Tests.Documents;

/// <summary>The steps from sheets to papers.</summary>
public sealed class DocumentsPageTests
{
    [Fact]
    public async Task In_an_empty_register_the_first_step_says_what_to_do()
    {
        await using var house = await TestHouse.OnEmptyAsync();

        await house.PressAsync("5");

        Assert.Equal(
            """
            First choose sheets: press s, or mark them with Space in any room and come back.

                                                                                      1 of 3
               key  step            as it stands
            ›  s    Which sheets    none yet
               k    What            certificates: issue and write
               o    Folder          /register/exports
            """,
            house.Shown());
        Assert.Equal(["Enter", "s", "k", "o"], house.House.Page.Keys.Select(key => key.Key));
    }

    [Theory]
    [InlineData("e", "Nothing is found by that.", "No work is recorded yet.")]
    [InlineData("p", "Nothing is found by that.", "No place is recorded yet.")]
    [InlineData("l", "Nothing is found by that.", "No show is recorded yet. Room 6 makes one.")]
    public async Task In_an_empty_register_every_list_says_that_there_is_nothing(string list, string found, string empty)
    {
        await using var house = await TestHouse.OnEmptyAsync();
        await house.PressAsync("5", "s", list);

        Assert.Contains(empty, house.Screen(), StringComparison.Ordinal);

        await house.PressAsync("/", "x");

        Assert.Contains(found, house.Screen(), StringComparison.Ordinal);
        Assert.Empty(house.Bugs);
    }

    [Theory]
    [InlineData("A/P 2", "   as artist's proof 2 ", "Harbour at Low Water", "Gull Rock")]
    [InlineData("c. 1960", "   as 1955 to 1965 ", "The Ferry Steps", "Gull Rock")]
    [InlineData("Radierung 2025", "   as the technique etching; the year 2025 ", "Gull Rock", "The Ferry Steps")]
    [InlineData("open tolland", "", "Tide Table", "Gull Rock")]
    public async Task The_editions_to_choose_from_are_found_by_number_date_and_technique(string typed, string understood, string found, string passed)
    {
        await using var house = await TestHouse.OnDemoAsync();
        await house.PressAsync("5", "s", "e", "/");

        await house.TypeAsync(typed);

        Assert.Contains($"Find: {typed}_{understood}", house.Screen(), StringComparison.Ordinal);
        Assert.Contains(found, house.Screen(), StringComparison.Ordinal);
        Assert.DoesNotContain(passed, house.Screen(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task All_of_nothing_is_told_and_not_offered_to_be_written()
    {
        await using var house = await TestHouse.OnEmptyAsync();

        await house.PressAsync("5", "s", "a");

        Assert.Contains("No sheet is among these. Choose others with s.", house.Screen(), StringComparison.Ordinal);
        Assert.DoesNotContain(house.House.Page.Keys, key => key.Key is "p" or "w");
    }

    [Fact]
    public async Task Sheets_marked_in_any_room_are_taken_first()
    {
        await using var house = await TestHouse.OnDemoAsync();
        house.House.Desk.Marked.Turn(house.Sheet(PapersHouse.Harbour, "4").ShownCode);

        await house.PressAsync("5");

        Assert.Contains("Which sheets    the marked sheets: 1 sheet", house.Screen(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_whole_edition_is_all_its_numbered_sheets()
    {
        await using var house = await TestHouse.OnDemoAsync();
        await house.PressAsync("5", "s", "e", "/");
        await house.TypeAsync("gull");

        await house.PressAsync("Enter", "Enter");

        Assert.Contains("Which sheets    “Gull Rock”: 10 sheets", house.Screen(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Some_numbers_are_typed_and_one_that_nobody_has_stays_in_the_form()
    {
        await using var house = await TestHouse.OnDemoAsync();
        await house.PickAsync("gull", "1, 9");
        var problem = house.Form.Problem;

        await house.FillAsync(("Numbers", "3-5, A/P I"));

        Assert.StartsWith("9 lies outside the numbering 1/8 to 8/8 of “Gull Rock”", problem, StringComparison.Ordinal);
        Assert.Contains("Which sheets    “Gull Rock” 3-5, A/P I: 4 sheets", house.Screen(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_place_is_taken_with_the_places_in_it()
    {
        await using var house = await TestHouse.OnDemoAsync();
        await house.PressAsync("5", "s", "p", "/");
        await house.TypeAsync("print room");

        await house.PressAsync("Enter", "Enter");

        Assert.Contains("Which sheets    all in Westhaven School › Print room: 8 sheets", house.Screen(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_shows_list_is_taken_in_its_order()
    {
        await using var house = await TestHouse.OnDemoAsync();
        var show = house.Register.MakeShow.Run(new NewShow { Name = "Open studio" });
        house.Register.AddToShow.Run(show, new ImpressionChoice { Edition = PapersHouse.GullRock, Sheets = "5, 2" });

        await house.PressAsync("5", "s", "l", "Enter", "k", "p", "p");

        Assert.Equal(
            """
            pencil lines: what is written under the image; the list of “Open studio”
            Under the image: the number at left, the title in the middle, the signature at
            right.
            1 of 1: 2 sheets
            code       left  middle                                           right
            UUQD-2JDC  5/8   Gull Rock                                        Mira Tolland
            6HVU-XH73  2/8   Gull Rock                                        Mira Tolland
            """,
            house.Screen());
        Assert.DoesNotContain(house.House.Page.Keys, key => key.Key == "w");
    }

    [Fact]
    public async Task Codes_are_typed_and_one_misread_stays_in_the_form()
    {
        await using var house = await TestHouse.OnDemoAsync();
        var code = house.Sheet(PapersHouse.Harbour, "4").ShownCode;
        await house.PressAsync("5", "s", "c");

        await house.FillAsync(("Codes", code[..^1] + (code[^1] == '2' ? '3' : '2')));
        var problem = house.Form.Problem;
        await house.FillAsync(("Codes", code));

        Assert.NotNull(problem);
        Assert.Contains($"Which sheets    sheets {code}: 1 sheet", house.Screen(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Another_room_leads_here_with_its_sheets_and_Esc_leads_back_to_it()
    {
        await using var house = await TestHouse.OnDemoAsync();
        var show = house.Register.MakeShow.Run(new NewShow { Name = "Open studio" });
        house.Register.AddToShow.Run(show, new ImpressionChoice { Edition = PapersHouse.GullRock, Sheets = "5, 2" });
        await house.PressAsync("6", "Enter");

        await house.PressAsync("d");

        Assert.Contains("Which sheets    the list of “Open studio”: 2 sheets", house.Screen(), StringComparison.Ordinal);
        await house.PressAsync("Esc");
        Assert.Equal("Open studio", house.House.Page.Title);
    }

    [Fact]
    public async Task Another_folder_is_named_and_stands_there_in_full()
    {
        await using var house = await TestHouse.OnDemoAsync();
        var folder = Path.Combine(house.Register.Folder.FullPath, "for the printer");
        await house.PickAsync("gull", "1");
        await house.MakeAsync("l");

        await house.PressAsync("o");
        await house.FillAsync(("Folder", folder));
        await house.PressAsync("w");

        Assert.True(File.Exists(Path.Combine(folder, "labels.pdf")));
        Assert.Contains("\n/register/for the printer/labels.pdf\n", house.Shown(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(80, 19)]
    [InlineData(120, 35)]
    public async Task The_steps_of_labels_are_legible(int width, int height)
    {
        await using var house = await TestHouse.OnDemoAsync();
        await house.PressAsync("5", "s", "a");
        await house.MakeAsync("l");
        await house.PressAsync("w", "Esc");

        ApprovedScreen.Is(house.Shown(width, height), $"steps-{width}", "Documents");
    }
}

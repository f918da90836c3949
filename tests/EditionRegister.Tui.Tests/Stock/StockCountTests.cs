using EditionRegister.Domain.Chains;
using EditionRegister.Domain.Dates;
using EditionRegister.Domain.Works;
using EditionRegister.Tui.Asking;
using EditionRegister.Tui.Stock;
using EditionRegister.UseCases;
using EditionRegister.UseCases.Choosing;
using EditionRegister.UseCases.People;

namespace EditionRegister.Tui.Tests.Stock;

/// <summary>Counting a drawer of a small studio: six sheets of “Harbour” lie in Drawer 1, two of them with Quay Gallery by now, four of “Heron” in Drawer 2.</summary>
public sealed class StockCountTests
{
    [Fact]
    public async Task Each_code_is_answered_at_once()
    {
        await using var house = await CountingAsync();
        var (gull, harbour) = (Code(house, "Heron", 1), Code(house, "Harbour", 1));

        await ScanAsync(house, gull);
        Assert.Equal($"present: {gull}, “Heron” pulled.", house.Message);
        await ScanAsync(house, $"https://saltmarsh.example/p/{gull.Replace("-", "", StringComparison.Ordinal)}");
        Assert.Equal($"{gull} was scanned before: “Heron” pulled. It counts once.", house.Message);
        await ScanAsync(house, harbour.ToLowerInvariant());
        Assert.Equal($"stranger: {harbour}, “Harbour” pulled; the register has it in Studio › Plan chest › Drawer 1.", house.Message);
        await ScanAsync(house, "7KQ4-M2X3");
        Assert.Equal("not ours: 7KQ4-M2X3, a code this register never gave.", house.Message);
        await ScanAsync(house, "7KQ4-M2X4");
        Assert.Equal("“7KQ4-M2X4” was not taken: its check character fails, so one of the others was misread. Look at the label and scan it again.", house.Message);
        await ScanAsync(house, "");
        Assert.Equal("Scan or type a code first; F2 records what was scanned.", house.Message);
        await house.PressAsync("Delete");
        Assert.Equal("Taken back: 7KQ4-M2X3, a code this register never gave.", house.Message);
    }

    [Theory]
    [InlineData(80, 19)]
    [InlineData(120, 35)]
    public async Task The_count_runs_and_what_is_to_find_is_a_key_away(int width, int height)
    {
        await using var house = await CountingAsync();

        await ScanAsync(house, Code(house, "Heron", 1));
        await ScanAsync(house, Code(house, "Harbour", 1));
        await ScanAsync(house, "7KQ4-M2X3");
        await house.TypeAsync("7kq");

        ApprovedScreen.Is(house.Screen(width, height), $"counting-{width}", "Stock");
        await house.PressAsync("Tab");
        ApprovedScreen.Is(house.Screen(width, height), $"to-find-{width}", "Stock");
    }

    // A scanner types eight characters and Enter in a few milliseconds, while the answer to the code before is still on its way.
    [Fact]
    public async Task Nothing_is_lost_when_a_scanner_types_faster_than_the_register_answers()
    {
        await using var house = await CountingAsync();
        var codes = house.Register.LookAround.Works().SelectMany(work => work.Impressions).Select(sheet => sheet.ShownCode).ToList();

        var keys = codes.SelectMany(code => code.Select(letter => letter.ToString()).Append("Enter")).ToList();
        await Task.WhenAll(keys.ConvertAll(house.House.PressAsync));

        // 6 + 4 sheets: the 4 of the drawer are present, 10 - 4 = 6 are strangers.
        Assert.StartsWith("Studio › Plan chest › Drawer 2\n4 of 4 present   0 to find   6 strangers\n", house.Screen(), StringComparison.Ordinal);
        Assert.Empty(house.Bugs);
    }

    [Fact]
    public async Task What_was_counted_is_recorded_proposed_and_accepted_key_by_key()
    {
        await using var house = await CountingAsync();
        var harbour = Code(house, "Harbour", 1);

        foreach (var sheet in LyingThere(house).Skip(1))
        {
            await ScanAsync(house, sheet);
        }

        await ScanAsync(house, harbour);
        await house.PressAsync("F2");
        await house.FillAsync(("Counted by", "Mira Tolland"));

        Assert.Equal("Stock-take 1 of Studio › Plan chest › Drawer 2, 2027-03-01: 3 present, 1 missing, 1 stranger. What the register says is not changed yet.", house.Message);
        Assert.IsType<StockTakePage>(house.House.Page);
        ApprovedScreen.Is(house.Screen(), "proposed-80", "Stock");
        ApprovedScreen.Is(house.Screen(120, 35), "proposed-120", "Stock");

        await house.PressAsync("y");
        Assert.Equal("Stock-take 1: 1 put away in Studio › Plan chest › Drawer 2, 2027-03-01; 1 is open.", house.Message);
        await house.PressAsync("u");
        Assert.Equal("1 sheet: last move taken back.", house.Message);
        await house.PressAsync("l", "y");
        Assert.Equal("Stock-take 1: 1 put away in Studio › Plan chest › Drawer 2, whereabouts of 1 unknown from now on, 2027-03-01; nothing is open.", house.Message);
        Assert.Equal(Position.Unknown, house.Register.LookAround.Impression(Code(house, "Heron", 1)).Impression.Where);
    }

    [Fact]
    public async Task Leaving_with_scans_asks_and_nothing_is_recorded()
    {
        await using var house = await CountingAsync();
        var head = house.Register.LookAround.Head();
        await ScanAsync(house, Code(house, "Heron", 1));

        await house.PressAsync("Esc");
        Assert.Equal("Leave without recording? 1 scan will be forgotten.", house.Question.Asked);
        await house.PressAsync("l");

        Assert.IsType<StockTakesPage>(house.House.Page);
        Assert.Equal(head, house.Register.LookAround.Head());
    }

    [Fact]
    public async Task While_codes_are_typed_letters_and_digits_are_no_keys()
    {
        await using var house = await CountingAsync();

        await house.PressAsync("1", "q", "?", "u", "/");

        Assert.IsType<StockCountPage>(house.House.Page);
        Assert.Null(house.House.Asking);
        Assert.Empty(house.House.Everywhere());
        Assert.Contains("Scan or type a code, then Enter: 1q?u/_", house.Screen(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Codes_come_from_a_file_too_and_a_misread_one_is_named()
    {
        await using var house = await CountingAsync();
        var good = house.Register.Folder.FullPath + "/scanned.txt";
        var bad = house.Register.Folder.FullPath + "/misread.txt";
        await File.WriteAllTextAsync(good, $"{Code(house, "Heron", 1)}\r\n{Code(house, "Heron", 2)}\r\n");
        await File.WriteAllTextAsync(bad, "\n7KQ4-M2X4\n");
        await ScanAsync(house, Code(house, "Heron", 1));

        await house.PressAsync("F3");
        await house.FillAsync(("File", bad));
        Assert.StartsWith("Not every code could be read: line 2, “7KQ4-M2X4”: its check character fails", house.Form.Problem, StringComparison.Ordinal);
        await house.FillAsync(("File", good));

        Assert.Equal("1 code taken from the file; nothing is recorded yet. 1 code had been scanned before.", house.Message);
    }

    [Fact]
    public async Task Another_window_moves_a_sheet_and_the_line_is_open_no_more()
    {
        await using var house = await CountingAsync();
        await ScanAsync(house, Code(house, "Harbour", 1));
        await house.PressAsync("F2");
        await house.FillAsync();
        house.Register.PutAway.Run(new ImpressionChoice { Sheets = Code(house, "Harbour", 1) }, "Drawer 3", RecordedDate.Read("2027-03-01"));

        await house.PressAsync("y");

        Assert.StartsWith("Stock-take 1 has nothing open under the code", house.Message, StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_came_back_is_counted_against_what_is_out()
    {
        await using var house = await AtDrawerAsync("drawer 1");
        await house.PressAsync("k", "r");
        await house.FillAsync(("From whom", "Quay Gallery"));
        Assert.Equal("2 sheets are out with Quay Gallery.", house.Message);
        await ScanAsync(house, Code(house, "Harbour", 5));
        await house.PressAsync("F2");
        await house.FillAsync();

        Assert.Equal("Return 1 into Studio › Plan chest › Drawer 1, 2027-03-01, back from Quay Gallery: 1 back, 1 still out, no stranger.", house.Message);
    }

    [Fact]
    public async Task Sheets_are_handed_over_code_by_code()
    {
        await using var house = await AtDrawerAsync("drawer 2");
        var scanned = Code(house, "Heron", 2);
        await house.PressAsync("Space", "Space", "o", "h");
        Assert.IsType<DeliveryPage>(house.House.Page);

        await ScanAsync(house, scanned);
        Assert.Equal($"handed over: {scanned}, “Heron” pulled.", house.Message);
        await house.PressAsync("F2");
        await house.FillAsync(("To whom", "Quay Gallery"), ("They are", "lent"));

        Assert.StartsWith("Delivery 1 from Studio › Plan chest › Drawer 2, 2027-03-01, lent to Quay Gallery: 1 handed over, 1 not handed over, no stranger.", house.Message, StringComparison.Ordinal);
        Assert.Equal("lent", house.Register.LookAround.Impression(scanned).Impression.Whereabouts[^1].Kind);
    }

    [Fact]
    public async Task A_place_is_shown_as_a_list_and_moved_about()
    {
        await using var house = await AtDrawerAsync("drawer 2");
        await house.PressAsync("l");
        ApprovedScreen.Is(house.Screen(), "place-list-80", "Stock");
        await house.PressAsync("Esc", "e");

        await house.FillAsync(("Inside", ""));
        Assert.Equal("Place 4 put right: Drawer 2.", house.Message);
        await house.PressAsync("u");
        Assert.Equal("Place 4 put right: Studio › Plan chest › Drawer 2.", house.Message);
        await house.PressAsync("e");
        await house.FillAsync(("Inside", "Drawer 2"));
        Assert.Equal("Studio › Plan chest › Drawer 2 cannot lie in itself. Nothing was changed. Name another place, or say that it lies in none.", house.Form.Problem);
    }

    private static async Task<TestHouse> AtDrawerAsync(string drawer)
    {
        var house = await TestHouse.OnEmptyAsync();
        Furnish(house.Register);
        await house.PressAsync("7", "v", "/");
        await house.TypeAsync(drawer);
        await house.PressAsync("Enter", "Enter");

        return house;
    }

    private static void Furnish(Register register)
    {
        register.RecordPerson.Run(new NewPerson { Name = "Mira Tolland" });
        register.RecordPerson.Run(new NewPerson { Name = "Quay Gallery", IsOrganisation = true });
        register.RecordPlace.Run("Studio › Plan chest › Drawer 1");
        register.RecordPlace.Run("Studio › Plan chest › Drawer 2");
        register.RecordPlace.Run("Studio › Plan chest › Drawer 3");
        register.RecordWork.Run(new NewWork { Title = "Harbour" }, ["Mira Tolland"]);
        register.RecordPrintRun.Run(1, new NewPrintRun { Started = 6, Printed = RecordedDate.Read("2027-01") }, "Drawer 1");
        register.RecordWork.Run(new NewWork { Title = "Heron" }, ["Mira Tolland"]);
        register.RecordPrintRun.Run(2, new NewPrintRun { Started = 4, Printed = RecordedDate.Read("2027-01") }, "Drawer 2");
        register.Consign.Run(new ImpressionChoice { Work = 1, Pile = "5-6" }, "Quay Gallery", RecordedDate.Read("2027-02-01"));
    }

    private static async Task<TestHouse> CountingAsync()
    {
        var house = await AtDrawerAsync("drawer 2");
        await house.PressAsync("k", "n");
        Assert.IsType<StockCountPage>(house.House.Page);

        return house;
    }

    private static async Task ScanAsync(TestHouse house, string code)
    {
        await house.TypeAsync(code);
        await house.PressAsync("Enter");
    }

    private static string Code(TestHouse house, string title, int place) =>
        house.Register.LookAround.Works().First(work => work.Title == title).Impressions.First(sheet => sheet.Ordinal == place).ShownCode;

    private static List<string> LyingThere(TestHouse house)
    {
        var place = Places.Find(house.Register.LookAround.Book(), "Drawer 2");

        return [.. house.Register.LookAround.StockToCount(place, alone: false).Things.Select(thing => thing.Code)];
    }
}

using EditionRegister.Domain.Works;
using EditionRegister.Tui.Bench;
using EditionRegister.Tui.Pages;
using EditionRegister.Tui.PlanChest;
using EditionRegister.UseCases.Choosing;
using EditionRegister.UseCases.Looking;

namespace EditionRegister.Tui.Tests.PlanChest;

/// <summary>The first room at work.</summary>
public sealed class PlanChestPageTests
{
    [Theory]
    [InlineData(80, 19)]
    [InlineData(120, 35)]
    public async Task The_chest_of_the_demo_is_shown(int width, int height)
    {
        await using var house = await TestHouse.OnDemoAsync();
        await house.House.Desk.Store.Idle();

        await house.PressAsync("Down", "Down", "Down", "Down");

        ApprovedScreen.Is(house.Screen(width, height), $"chest-of-the-demo-{width}");
    }

    [Theory]
    [InlineData(80, 19)]
    [InlineData(120, 35)]
    public async Task Odd_editions_are_legible_line_by_line(int width, int height)
    {
        await using var house = await TestHouse.OnEmptyAsync();
        house.Register.Unnumbered();
        house.Register.PrintedTwice();
        house.Register.PartlyKnown();
        house.Register.SomeoneElses();
        house.Register.Undeclared();
        await house.PressAsync("2", "1", "End");

        var screen = house.Screen(width, height);

        ApprovedScreen.Is(screen, $"chest-of-odd-editions-{width}");
        Assert.All(screen.Split('\n'), line => Assert.InRange(Domain.Text.TextWidth.Of(line), 0, width));
    }

    [Fact]
    public async Task An_empty_chest_says_what_to_do_first()
    {
        await using var house = await TestHouse.OnEmptyAsync();
        await house.House.Desk.Store.Idle();

        var screen = house.Screen();

        Assert.Equal("""
            / finds by title, maker, code, place, owner, number, date, technique
               title                  maker          year   edition         here  away  sold
            The plan chest is empty.

            Begin with a work: press 2 for the Bench and record what you print there. Or
            press a to read in a list you already have, as a CSV file.
            """, screen);
        Assert.Equal(["n new work", "a read in a file", "t what is due", "k another's print"], house.House.Page.Keys.Select(key => $"{key.Key} {key.Does}"));
    }

    [Fact]
    public async Task Typing_finds_by_title_maker_owner_place_and_code()
    {
        await using var house = await TestHouse.OnDemoAsync();
        await house.House.Desk.Store.Idle();
        (string Typed, string Title)[] expected =
        [
            ("HARBOUR", "Harbour at Low Water"), ("harbour tolland", "Harbour at Low Water"), ("marrowby", "My Street in Rain"), ("ines vargoy", "Harbour at Low Water"),
            ("display noor", "Letters I Like"), ("rt4f6", "Harbour at Low Water"), ("RT4F-6MMV", "Harbour at Low Water"),
        ];

        foreach (var (typed, title) in expected)
        {
            await house.PressAsync("/");
            await house.TypeAsync(typed);

            Assert.Equal([title], Titles(house));

            await house.PressAsync("Esc");
        }
    }

    [Fact]
    public async Task A_number_a_date_and_a_technique_are_understood_as_they_are_written_and_it_is_said_how()
    {
        await using var house = await TestHouse.OnDemoAsync();
        await house.House.Desk.Store.Idle();
        (string Typed, string Understood, string[] Titles)[] expected =
        [
            ("A/P 2", "   as artist's proof 2 ", ["Harbour at Low Water"]), ("ap ii/ii", "   as artist's proof II of II ", ["Harbour at Low Water"]),
            ("3/8", "   as number 3 of 8 ", ["Groynes in Fog", "Gull Rock"]), ("tolland B.A.T.", "   as bon à tirer ", ["Gull Rock"]),
            ("c. 1960", "   as 1955 to 1965 ", ["The Ferry Steps", "The Ferry Steps"]), ("before 2000", "   as up to 2000 ", ["The Ferry Steps", "The Ferry Steps"]),
            ("Radierung 2025", "   as the technique etching; the year 2025 ", ["Gull Rock"]),
        ];

        foreach (var (typed, understood, titles) in expected)
        {
            await house.PressAsync("/");
            await house.TypeAsync(typed);

            Assert.Contains($"Find: {typed}_{understood}", house.Screen(), StringComparison.Ordinal);
            Assert.Equal(titles, Titles(house));

            await house.PressAsync("Esc");
        }
    }

    [Fact]
    public async Task With_every_letter_of_a_technique_the_list_grows_shorter_and_never_longer()
    {
        await using var house = await TestHouse.OnDemoAsync();
        await house.House.Desk.Store.Idle();
        await house.PressAsync("/");
        List<IReadOnlyList<string>> found = [Titles(house)];

        foreach (var letter in "linocut")
        {
            await house.TypeAsync(letter.ToString());
            found.Add(Titles(house));
        }

        Assert.Equal(["Ebb", "Groynes in Fog", "Harbour at Low Water", "Neap Tide", "Spring Tide"], found[^1].Order(StringComparer.Ordinal));
        Assert.All(found.Zip(found.Skip(1)), pair => Assert.Empty(pair.Second.Except(pair.First)));
    }

    [Fact]
    public async Task An_edition_found_by_a_number_opens_on_it()
    {
        await using var house = await TestHouse.OnDemoAsync();
        await house.House.Desk.Store.Idle();
        await house.PressAsync("/");
        await house.TypeAsync("A/P 2");
        await house.PressAsync("Enter");
        var found = house.Screen();

        await house.PressAsync("Enter");

        Assert.StartsWith("Found by A/P 2   as artist's proof 2   Esc shows all", found, StringComparison.Ordinal);
        Assert.Equal("A/P II", Assert.IsType<EditionPage>(house.House.Page).Here!.Typed);
        await house.PressAsync("Left", "Esc", "Enter");
        Assert.Equal("A/P II", Assert.IsType<EditionPage>(house.House.Page).Here!.Typed);
    }

    [Fact]
    public async Task Where_there_is_no_room_what_was_understood_is_left_out_first()
    {
        await using var house = await TestHouse.OnDemoAsync();
        await house.PressAsync("/");
        await house.TypeAsync("linocut 2026 spring 2026 artist's proof 1");
        await house.PressAsync("Enter");
        await house.House.Desk.Store.Idle();

        Assert.StartsWith("Found by linocut 2026 spring 2026 artist's proof 1   Esc shows all", house.Screen(), StringComparison.Ordinal);
        Assert.DoesNotContain("   as ", house.Screen().Split('\n')[0], StringComparison.Ordinal);
        Assert.Contains("   as the technique linocut; March 2026 to May 2026; the year 2026   Esc", house.Screen(160, 35).Split('\n')[0], StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_is_not_found_is_said_and_Esc_shows_all_again()
    {
        await using var house = await TestHouse.OnDemoAsync();
        await house.PressAsync("/");
        await house.TypeAsync("zebra");
        var nothing = house.Screen();

        await house.PressAsync("Esc");

        Assert.Contains("Nothing is found by that. Esc shows all.", nothing, StringComparison.Ordinal);
        Assert.Equal(19, Titles(house).Count);
    }

    [Fact]
    public async Task While_places_and_codes_are_read_the_list_stands_already_and_says_so()
    {
        await using var house = await TestHouse.OnDemoAsync();
        await house.House.Desk.Store.Idle();
        using ManualResetEventSlim opened = new();
        using ManualResetEventSlim read = new();
        PlanChestPage page = new(house.House.Desk);
        _ = house.House.Desk.Store.Do(_ => opened.Wait());
        var opening = page.RefreshAsync();
        _ = house.House.Desk.Store.Do(_ => read.Wait());
        opened.Set();
        await opening;
        var before = Drawn(page);

        read.Set();
        await house.House.Desk.Store.Idle();

        Assert.StartsWith("reading places and codes…\n", before, StringComparison.Ordinal);
        Assert.Contains("Heron                  Tam Birdseye   2026   2                  …     …     …", before, StringComparison.Ordinal);
        Assert.DoesNotContain("reading", Drawn(page), StringComparison.Ordinal);
        Assert.Contains("Heron                  Tam Birdseye   2026   2                  2     0     0", Drawn(page), StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_another_window_wrote_is_there_on_return_and_the_cursor_stays_on_its_line()
    {
        await using var house = await TestHouse.OnDemoAsync();
        await house.House.Desk.Store.Idle();
        await house.PressAsync([.. Enumerable.Repeat("Down", Titles(house).ToList().IndexOf("Letters I Like"))]);
        house.Register.RecordWork.Run(new NewWork { Title = "Avocet" }, ["Tam Birdseye"]);
        house.Register.Consign.Run(new ImpressionChoice { Edition = 6, Sheets = "2" }, "Quay Gallery");

        await house.PressAsync("2", "1");

        Assert.Contains("   Avocet                 Tam Birdseye          not declared       0     0     0", house.Screen(), StringComparison.Ordinal);
        Assert.Contains("›  Letters I Like         Noor Kessanly  2026   3                  2     1     0", house.Screen(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_tray_of_a_varied_edition_says_how_the_sheet_at_hand_differs()
    {
        await using var house = await TestHouse.OnDemoAsync();
        await house.PressAsync("/");
        await house.TypeAsync("six weathers");

        await house.PressAsync("Enter", "Enter", "Right");

        Assert.Contains("This one: noon: blue, wiped clean", house.Screen(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Enter_opens_an_edition_as_its_tray()
    {
        await using var house = await TestHouse.OnDemoAsync();

        await house.PressAsync("Enter");

        Assert.Equal(["Plan chest", "“Flood”"], house.House.Here.Titles);
        Assert.IsType<EditionPage>(house.House.Page);
    }

    [Fact]
    public async Task A_work_without_an_edition_opens_at_the_bench()
    {
        await using var house = await TestHouse.OnEmptyAsync();
        house.Register.Undeclared();
        await house.PressAsync("2", "1");

        await house.PressAsync("Enter");

        Assert.Equal(RoomName.Bench, house.House.Here.Name);
        Assert.IsType<WorkPage>(house.House.Page);
    }

    [Fact]
    public void A_key_in_a_list_of_any_length_looks_at_no_line_but_those_drawn()
    {
        Watched lines = new(1_000_000);

        var rows = ChestRows.Of(lines, areCounted: true);

        Assert.Equal(1_000_000, rows.Count);
        Assert.Equal(0, lines.Looks);
        Assert.Equal("Line 77", rows.Cells(77)[0]);
        Assert.Equal(1, lines.Looks);
    }

    private static List<string> Titles(TestHouse house)
    {
        var rows = Assert.IsType<PlanChestPage>(house.House.Page).Rows;

        return [.. Enumerable.Range(0, rows.Count).Select(row => rows.Cells(row)[0])];
    }

    private static string Drawn(PlanChestPage page) =>
        string.Join('\n', PagePicture.Of(page, 80, 19).Lines.Select(line => line.ToString().TrimEnd())).TrimEnd();

    /// <summary>A list that knows how often it was looked into.</summary>
    private sealed class Watched(int count) : IReadOnlyList<ChestLine>
    {
        public int Looks { get; private set; }

        public int Count => count;

        public ChestLine this[int index]
        {
            get
            {
                Looks++;
                return new ChestLine(index, index, 1, $"Line {index}", "", null, null, "limited", "whole", "no", "12", 0, 0, 0, 0);
            }
        }

        public IEnumerator<ChestLine> GetEnumerator() => throw new InvalidOperationException("A list of any length was read from end to end.");

        System.Collections.IEnumerator System.Collections.IEnumerable.GetEnumerator() => GetEnumerator();
    }
}

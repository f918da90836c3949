using EditionRegister.Domain.Text;
using EditionRegister.Tui.Asking;
using Terminal.Gui.Input;

namespace EditionRegister.Tui.Tests.Screen;

/// <summary>The whole screen at work: what is always in sight, forms under the fingers, and text that would break it.</summary>
public sealed class MainWindowTests
{
    private static readonly Key AddressBook = new('7');

    [Fact]
    public async Task Register_room_and_keys_are_always_in_sight()
    {
        await using var house = await TestHouse.OnEmptyAsync();
        using TestTerminal terminal = new(house.House);

        await terminal.PressAsync(AddressBook);

        Assert.StartsWith("Test studio", terminal.Lines[0], StringComparison.Ordinal);
        Assert.EndsWith("/home/me/register", terminal.Lines[0], StringComparison.Ordinal);
        Assert.Equal("1 Plan chest 2 Bench 3 Logbook 4 Findings 5 Documents 6 Shows [7 Address book]", terminal.Lines[1]);
        Assert.Contains("n record someone", terminal.Lines[22], StringComparison.Ordinal);
        Assert.Equal("1-7 rooms   / filter   ? explain   q leave", terminal.Lines[23]);
    }

    [Fact]
    public async Task A_form_is_filled_in_and_saved_by_keys_alone()
    {
        await using var house = await TestHouse.OnEmptyAsync();
        using TestTerminal terminal = new(house.House);
        await terminal.PressAsync(AddressBook, new Key('n'));

        await terminal.TypeAsync("Mira Tolland");
        await terminal.PressAsync(Key.F2);

        Assert.Equal("Mira Tolland recorded as person 1; in public “Mira Tolland”.", terminal.Lines[21]);
        Assert.Equal("Mira Tolland", house.Register.LookAround.Book().People[1].Name);
    }

    [Fact]
    public async Task What_is_wrong_is_said_in_the_form_and_nothing_is_saved()
    {
        await using var house = await TestHouse.OnEmptyAsync();
        using TestTerminal terminal = new(house.House);
        await terminal.PressAsync(AddressBook, new Key('n'));

        await terminal.PressAsync(Key.F2);

        Assert.Contains("Name is needed: as it is written: Mira Tolland.", terminal.Text, StringComparison.Ordinal);
        Assert.Empty(house.Register.LookAround.Book().People);
    }

    [Fact]
    public async Task One_stray_Esc_loses_nothing_and_two_keep_a_draft()
    {
        await using var house = await TestHouse.OnEmptyAsync();
        using TestTerminal terminal = new(house.House);
        await terminal.PressAsync(AddressBook, new Key('n'));
        await terminal.TypeAsync("Mira");

        await terminal.PressAsync(Key.Esc);
        var afterOne = house.House.Asking;
        await terminal.PressAsync(Key.Esc);
        var afterTwo = house.House.Asking;
        await terminal.PressAsync(new Key('n'));

        Assert.IsType<Form>(afterOne);
        Assert.Null(afterTwo);
        Assert.Equal("Mira", house.Form.Fields[0].Text);
        Assert.Contains("This is what you typed before and did not save.", terminal.Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task As_last_time_fills_in_all_but_what_is_each_ones_own()
    {
        await using var house = await TestHouse.OnEmptyAsync();
        using TestTerminal terminal = new(house.House);
        await terminal.PressAsync(AddressBook, new Key('n'));
        await house.FillAsync(("Name", "Quay Gallery"), ("What", "organisation"));
        await terminal.PressAsync(new Key('n'));

        await terminal.PressAsync(Key.F4);

        Assert.Equal("organisation", house.Form.FieldOf("What").Text);
        Assert.Equal("", house.Form.FieldOf("Name").Text);
    }

    [Fact]
    public async Task Words_that_find_no_room_are_gone_through_one_by_one()
    {
        await using var house = await TestHouse.OnEmptyAsync();
        using TestTerminal terminal = new(house.House);
        string[] words = [.. Enumerable.Range(1, 12).Select(n => $"a long answer {n}")];
        house.House.Here.Open(new AskingPage(() => new Form("Which", [Field.OneOf("One", words)], _ => Task.FromResult(new Saved("Saved.")))));
        await terminal.PressAsync(new Key('f'));

        await terminal.PressAsync(Key.CursorRight);

        Assert.Contains("‹a long answer 2›  2 of 12; Left and Right show the others", terminal.Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Rooms_and_keys_can_be_clicked()
    {
        await using var house = await TestHouse.OnEmptyAsync();
        using TestTerminal terminal = new(house.House);

        await terminal.ClickAsync(70, 1);
        var room = house.House.Here.Name.ToString();
        await terminal.ClickAsync(3, 22);

        Assert.Equal("AddressBook", room);
        Assert.Equal("Record someone", house.Form.Title);
    }

    [Fact]
    public async Task A_window_too_small_says_so_and_all_is_back_when_it_has_grown()
    {
        await using var house = await TestHouse.OnEmptyAsync();
        using TestTerminal terminal = new(house.House);
        await terminal.PressAsync(AddressBook);
        var before = terminal.Text;

        terminal.Resize(60, 20);
        var small = terminal.Text;
        terminal.Resize(80, 24);

        Assert.StartsWith("This window is 60 × 20. The register needs 80 × 24: make it larger, and all stands as it was.", small.Replace("\n", " ", StringComparison.Ordinal), StringComparison.Ordinal);
        Assert.Equal(before, terminal.Text);
    }

    [Theory]
    [InlineData("漢字の版画 工房", "漢字の版画 工房")]
    [InlineData("שלום עולם", "שלום עולם")]
    [InlineData("e\u0301tude", "e\u0301tude")]
    [InlineData("Esc\u001b[31mred\u0007", "Esc␛[31mred␇")]
    [InlineData("over\u202Eride", @"over\u{202E}ride")]
    public async Task Text_of_others_keeps_its_columns_and_does_nothing(string name, string shown)
    {
        await using var house = await TestHouse.OnEmptyAsync();
        house.Register.RecordPerson.Run(new UseCases.People.NewPerson { Name = name, ClassCode = "8B-01" });
        using TestTerminal terminal = new(house.House);

        await terminal.PressAsync(AddressBook);

        var row = terminal.Lines.First(line => line.Contains("8B-01", StringComparison.Ordinal));
        Assert.Contains(shown.Normalize(), row.Normalize(), StringComparison.Ordinal);
        Assert.Equal(
            TextWidth.Of(terminal.Lines.First(line => line.Contains("in public", StringComparison.Ordinal)).Split("class")[0]),
            TextWidth.Of(row.Split("8B-01")[0]));
        Assert.DoesNotContain("\u001b[31mred", terminal.Ansi, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Without_colour_no_colour_is_sent()
    {
        await using var house = await TestHouse.OnEmptyAsync();
        using TestTerminal coloured = new(house.House);
        await coloured.PressAsync(AddressBook, new Key('n'));
        await house.FillAsync(("Name", "Mira Tolland"));
        var with = coloured.Ansi;

        using TestTerminal plain = new(house.House, hasColour: false);

        Assert.Matches("\u001b\\[[0-9;]*3[0-7]m", with);
        Assert.DoesNotMatch("\u001b\\[[0-9;]*(3[0-7]|4[0-7]|9[0-7]|10[0-7])m", plain.Ansi);
    }

    [Fact]
    public async Task Where_the_locale_is_not_utf_8_only_ascii_is_drawn()
    {
        await using var house = await TestHouse.OnEmptyAsync();
        house.Register.RecordPerson.Run(new UseCases.People.NewPerson { Name = "Inés Vargøy 漢" });
        using TestTerminal terminal = new(house.House, isAscii: true);

        await terminal.PressAsync(AddressBook);

        Assert.True(System.Text.Ascii.IsValid(terminal.Text), terminal.Text);
        Assert.Contains(">  Ines Varg", terminal.Text, StringComparison.Ordinal);
        Assert.Contains("-- Address book ---", terminal.Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_mistake_of_our_own_is_owned_up_to_and_the_screen_stands()
    {
        await using var house = await TestHouse.OnEmptyAsync();
        using TestTerminal terminal = new(house.House);

        house.House.Here.Open(new FailingPage());
        await terminal.PressAsync(new Key('b'));

        Assert.Contains("This is a bug", terminal.Text, StringComparison.Ordinal);
        Assert.Contains("1 Plan chest", terminal.Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_page_that_cannot_be_drawn_is_owned_up_to_once_and_left_again()
    {
        await using var house = await TestHouse.OnEmptyAsync();
        using TestTerminal terminal = new(house.House);
        await terminal.PressAsync(AddressBook);

        house.House.Here.Open(new FailingPage(inDrawing: true));
        terminal.Resize(100, 30);
        var failed = terminal.Text;
        terminal.Resize(80, 24);
        await terminal.PressAsync(Key.Esc);

        Assert.Contains("This is a bug in edreg: index out of the screen.", failed, StringComparison.Ordinal);
        Assert.Single(house.Bugs);
        Assert.Contains("Nobody is in the address book yet.", terminal.Text, StringComparison.Ordinal);
    }
}

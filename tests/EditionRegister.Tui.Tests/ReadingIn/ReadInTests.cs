using EditionRegister.Tui.PlanChest;
using EditionRegister.Tui.ReadingIn;

namespace EditionRegister.Tui.Tests.ReadingIn;

/// <summary>A file shown, read in, and undone.</summary>
public sealed class ReadInTests : IDisposable
{
    private readonly FilesToRead _files = new();

    public void Dispose() => _files.Dispose();

    [Theory]
    [InlineData(80, 19)]
    [InlineData(120, 35)]
    public async Task A_file_is_shown_before_anything_is_taken(int width, int height)
    {
        await using var house = await TestHouse.OnEmptyAsync();
        var head = house.Register.LookAround.Head();

        await _files.AskAsync(house, FilesToRead.Good);

        ApprovedScreen.Is(house.Screen(width, height), $"preview-{width}", "ReadingIn");
        Assert.Equal(head, house.Register.LookAround.Head());
    }

    [Fact]
    public async Task It_is_read_in_when_told_and_undone_as_a_whole()
    {
        await using var house = await TestHouse.OnEmptyAsync();
        await _files.AskAsync(house, FilesToRead.Good);

        await house.PressAsync("y");
        Assert.Equal("Read in as batch 1.", house.Message);
        Assert.Equal("In the register now: 2 new works, 2 new editions, 3 sheets.", house.Screen().Split('\n')[2]);
        Assert.Equal([1, 2], house.Register.LookAround.Works().Select(work => work.Impressions.Count).Order());

        await house.PressAsync("u");
        Assert.Equal("Batch 1 undone: 3 impressions taken out again; their codes stay given.", house.Message);
        Assert.Empty(house.Register.LookAround.Works());
        Assert.Equal("Nothing was read in yet. Press y to read it in, or Esc to leave it.", house.Screen().Split('\n')[1]);

        await house.PressAsync("y");
        Assert.Equal(3, house.Register.LookAround.Works().Sum(work => work.Impressions.Count));
    }

    [Fact]
    public async Task Going_back_takes_nothing()
    {
        await using var house = await TestHouse.OnEmptyAsync();
        var head = house.Register.LookAround.Head();
        await _files.AskAsync(house, FilesToRead.Good);

        await house.PressAsync("Esc");

        Assert.IsType<PlanChestPage>(house.House.Page);
        Assert.Equal(head, house.Register.LookAround.Head());
    }

    [Fact]
    public async Task A_file_read_in_before_adds_nothing_and_offers_nothing()
    {
        await using var house = await TestHouse.OnEmptyAsync();
        house.Register.ReadIn.Run(_files.Write("before.csv", FilesToRead.Good), []);

        await _files.AskAsync(house, FilesToRead.Good);

        Assert.Equal("This file was read in before, as batch 1; nothing was added.", house.Screen().Split('\n')[1]);
        Assert.Equal(["f", "Esc"], house.House.Page.Keys.Select(key => key.Key));
    }

    [Fact]
    public async Task Bad_rows_stand_line_by_line_and_the_file_is_looked_into_again()
    {
        await using var house = await TestHouse.OnEmptyAsync();
        await _files.AskAsync(house, "maker,title,number,edition size,signed\r\nAda Brandt,Dyke,21/20,20,perhaps\r\nAda Brandt,Dyke,3/20,20,yes\r\nAda Brandt,Dyke,3/20,20,yes\r\n");
        ApprovedScreen.Is(house.Screen(), "bad-rows-80", "ReadingIn");
        Assert.DoesNotContain("y", house.House.Page.Keys.Select(key => key.Key));

        _files.Write("prints.csv", "maker,title,number,edition size,signed\r\nAda Brandt,Dyke,3/20,20,yes\r\n");
        await house.PressAsync("a", "y");

        Assert.Equal("Read in as batch 1.", house.Message);
    }

    [Theory]
    [InlineData("title,maker\r\nWeir\r\nWeir,Mira,Tolland\r\n")]
    [InlineData("title,maker\r\n")]
    [InlineData("title,maker\r\n\"Weir,Mira Tolland\r\n")]
    [InlineData("")]
    public async Task A_file_that_cannot_be_read_is_refused_where_it_was_typed_in_the_commands_words(string text)
    {
        await using var house = await TestHouse.OnEmptyAsync();
        var refused = Assert.Throws<Domain.RefusedException>(() => house.Register.ReadIn.Preview(_files.Write("prints.csv", text), []));

        await _files.AskAsync(house, text);

        Assert.Equal(refused.Message, house.Form.Problem);
    }

    [Fact]
    public async Task A_file_that_is_not_there_is_told_by_its_whole_path()
    {
        await using var house = await TestHouse.OnEmptyAsync();
        await house.PressAsync("1", "a");

        await house.FillAsync(("File", $"'{_files.Folder}/nowhere.csv'"));

        Assert.Equal($"There is no file {_files.Folder}/nowhere.csv. Nothing was read in. Look at its name and folder.", house.Form.Problem);
    }

    [Fact]
    public async Task Semicolons_of_a_continental_spreadsheet_are_read()
    {
        await using var house = await TestHouse.OnEmptyAsync();

        await _files.AskAsync(house, "Title;Artist;Edition no.\r\nDyke;Ada Brandt;3/20\r\n");

        Assert.Equal("prints.csv: 1 row of 1 work, 1 of them new.", house.Screen().Split('\n')[0]);
        Assert.Contains("number", house.Screen(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_file_changed_after_it_was_shown_is_refused_and_shown_anew()
    {
        await using var house = await TestHouse.OnEmptyAsync();
        await _files.AskAsync(house, FilesToRead.Good);
        _files.Write("prints.csv", "maker,title,number\r\nAda Brandt,Dyke,2/0\r\n");

        await house.PressAsync("y");

        Assert.StartsWith("prints.csv was not read in, because of 1 thing.", house.Message, StringComparison.Ordinal);
        Assert.StartsWith("Nothing was read in: put the 1 problem right and press a to look again.", house.Screen().Split('\n')[1], StringComparison.Ordinal);
        Assert.Empty(house.Register.LookAround.Works());
    }

    [Fact]
    public async Task What_was_built_on_a_batch_keeps_it()
    {
        await using var house = await TestHouse.OnEmptyAsync();
        await _files.AskAsync(house, FilesToRead.Good);
        await house.PressAsync("y");
        house.Register.RecordMatrix.Run(1, "block", null, "no", Domain.Dates.RecordedDate.None);

        await house.PressAsync("u");

        Assert.Equal("Batch 1 cannot be undone: something was built on it since (matrix 1). Nothing was changed. Put single things right instead.", house.Message);
        Assert.Equal(2, house.Register.LookAround.Works().Count);
    }

    [Fact]
    public async Task The_page_that_shows_a_file_draws_values_that_would_drive_a_terminal()
    {
        await using var house = await TestHouse.OnEmptyAsync();

        await _files.AskAsync(house, "title,maker,\u001b[31mred 王芳王芳王芳王芳王芳王芳王芳王芳王芳王芳王芳王芳\r\nDyke,Ada,x\r\n");

        Assert.IsType<ReadInPage>(house.House.Page);
        Assert.All(house.Screen().Split('\n'), line => Assert.True(Domain.Text.TextWidth.Of(Domain.Text.SafeText.Show(line)) <= 80, line));
    }
}

using EditionRegister.Domain;
using EditionRegister.Domain.Documents;
using EditionRegister.Store;
using EditionRegister.UseCases;
using EditionRegister.UseCases.Registers;

namespace EditionRegister.Tui.Tests.Welcome;

/// <summary>The first minutes of somebody who has never seen the program.</summary>
public sealed class WelcomeTests : IDisposable
{
    private readonly WelcomeHouse _house = new();

    public void Dispose() => _house.Dispose();

    [Fact]
    public void It_says_what_this_is_and_what_can_be_done()
    {
        ApprovedScreen.Is(_house.Screen(100), "welcome-100", "Welcome");
    }

    [Fact]
    public async Task A_register_is_made_as_it_was_asked_for_and_opened()
    {
        await _house.House.PressAsync("n");

        await _house.FillAsync(("Folder", "my prints"), ("What it is called", "Studio Tolland"), ("Currency of your prices", "gbp"), ("Paper for documents", "Letter"), ("Address for QR links", "https://studio.example/p/"));

        Assert.Equal(_house.In("my prints"), _house.House.Left!.Open);
        Assert.Equal(
            new RegisterSettings { Name = "Studio Tolland", Currency = "GBP", Page = PageSize.Letter, BaseUrl = "https://studio.example/p" },
            Register.Open(new RegisterFolder(_house.In("my prints"))).Settings);
    }

    [Fact]
    public async Task Without_a_name_it_is_called_like_its_folder()
    {
        await _house.House.PressAsync("n");

        await _house.FillAsync();

        Assert.Equal("register", Register.Open(new RegisterFolder(_house.In("register"))).Settings.Name);
    }

    [Fact]
    public async Task A_folder_that_holds_other_files_is_not_filled()
    {
        Directory.CreateDirectory(_house.In("letters"));
        File.WriteAllText(_house.In("letters", "to the bank.txt"), "");
        await _house.House.PressAsync("n");

        await _house.FillAsync(("Folder", "letters"));

        Assert.Equal($"{_house.In("letters")} holds other files. A register has a folder of its own: name one that is not there yet, such as {_house.In("letters", "register")}.", _house.Form.Problem);
    }

    [Fact]
    public async Task An_empty_folder_will_do()
    {
        Directory.CreateDirectory(_house.In("prints"));
        await _house.House.PressAsync("n");

        await _house.FillAsync(("Folder", "prints"));

        Assert.Equal(_house.In("prints"), _house.House.Left!.Open);
    }

    [Fact]
    public async Task A_folder_that_holds_a_register_is_left_alone_and_the_way_in_told()
    {
        new MakeRegister(Surroundings.Usual).Run(new RegisterFolder(_house.In("prints")), new RegisterSettings { Name = "Mine" });
        await _house.House.PressAsync("n");

        await _house.FillAsync(("Folder", "prints"));

        Assert.Equal($"{_house.In("prints")} holds a register already. Leave this form with Esc and press o to open it, or name another folder.", _house.Form.Problem);
        Assert.Equal("Mine", Register.Open(new RegisterFolder(_house.In("prints"))).Settings.Name);
    }

    [Fact]
    public async Task Where_nothing_can_be_written_it_is_said_and_nothing_typed_is_lost()
    {
        File.WriteAllText(_house.In("file"), "");
        await _house.House.PressAsync("n");

        await _house.FillAsync(("Folder", "file/prints"), ("What it is called", "Studio Tolland"));

        Assert.StartsWith($"No register was made: {_house.In("file", "prints")} cannot be written (", _house.Form.Problem, StringComparison.Ordinal);
        Assert.Equal("Studio Tolland", _house.Form["What it is called"]);
    }

    [Theory]
    [InlineData("Currency of your prices", "euro", "“euro” is no currency: write three letters, such as EUR, GBP or USD.")]
    [InlineData("Address for QR links", "studio.example", "“studio.example” is no address to link to: write a whole address such as https://example.org/prints, without ? and #.")]
    [InlineData("Folder", "", "Folder is needed: a folder of its own, made anew: register, or ~/prints.")]
    [InlineData("Folder", "\0", "That is no path.")]
    public async Task A_wrong_answer_is_told_with_the_form_of_a_right_one(string label, string typed, string told)
    {
        await _house.House.PressAsync("n");

        await _house.FillAsync((label, typed));

        Assert.Equal(told, _house.Form.Problem);
        Assert.Same(_house.Form.FieldOf(label), _house.Form.Current);
    }

    [Theory]
    [InlineData("prints")]
    [InlineData("prints/register.db")]
    [InlineData("'prints/'")]
    public async Task A_register_elsewhere_is_opened_by_its_folder_or_its_file(string typed)
    {
        new MakeRegister(Surroundings.Usual).Run(new RegisterFolder(_house.In("prints")), new RegisterSettings { Name = "Mine" });
        await _house.House.PressAsync("o");

        await _house.FillAsync(("Folder", typed));

        Assert.Equal(_house.In("prints"), _house.House.Left!.Open);
    }

    [Fact]
    public async Task A_folder_without_a_register_is_not_opened()
    {
        Directory.CreateDirectory(_house.In("letters"));
        await _house.House.PressAsync("o");

        await _house.FillAsync(("Folder", "letters"));
        Assert.Equal($"{_house.In("letters")} holds no register.db, so no register lies there.", _house.Form.Problem);
        await _house.FillAsync(("Folder", "nowhere"));

        Assert.Equal($"There is no folder {_house.In("nowhere")}.", _house.Form.Problem);
    }
}

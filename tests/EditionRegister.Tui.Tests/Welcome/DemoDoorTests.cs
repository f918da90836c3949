using EditionRegister.Domain;
using EditionRegister.Store;
using EditionRegister.Tui.Asking;
using EditionRegister.UseCases;
using EditionRegister.UseCases.People;
using EditionRegister.UseCases.Registers;

namespace EditionRegister.Tui.Tests.Welcome;

/// <summary>The way into the demo.</summary>
public sealed class DemoDoorTests : IDisposable
{
    private readonly WelcomeHouse _house = new();

    private RegisterFolder Usual => new(_house.In("exports", "demo", "register"));

    public void Dispose() => _house.Dispose();

    [Fact]
    public async Task It_is_made_and_opened_and_the_next_time_opened_as_it_was_left()
    {
        await _house.House.PressAsync("d");
        Assert.Equal(Usual.FullPath, _house.House.Left!.Open);
        Register.Open(Usual).RecordPerson.Run(new NewPerson { Name = "Nell Brack" });

        await _house.House.PressAsync("d");
        Assert.Equal("There is a demo here already. Open it as it was left, or make it anew?", Assert.IsType<Question>(_house.House.Asking).Asked);
        await _house.House.PressAsync("o");

        Assert.Equal(13, Register.Open(Usual).LookAround.Book().People.Count);

        await _house.House.PressAsync("d");
        await _house.House.PressAsync("a");

        Assert.Equal(12, Register.Open(Usual).LookAround.Book().People.Count);
    }

    [Fact]
    public async Task A_register_of_ones_own_in_its_place_is_never_touched_and_another_folder_asked_for()
    {
        new MakeRegister(Surroundings.Usual).Run(Usual, new RegisterSettings { Name = "Mine" });

        await _house.House.PressAsync("d");
        Assert.Equal([$"{Usual.FullPath} holds a register of your own, and the demo replaces only a demo. Nothing was changed. Name another folder for the demo; on the command line with --to."], _house.Form.About);
        await _house.FillAsync(("Folder", "trial"));

        Assert.Equal(_house.In("trial"), _house.House.Left!.Open);
        Assert.Equal("Mine", Register.Open(Usual).Settings.Name);
    }

    [Fact]
    public async Task Where_it_cannot_be_written_another_folder_is_asked_for()
    {
        File.WriteAllText(_house.In("exports"), "");

        await _house.House.PressAsync("d");
        Assert.StartsWith($"No register was made: the demo cannot be written to {Usual.FullPath} (", _house.Form.About[0], StringComparison.Ordinal);
        await _house.FillAsync(("Folder", "exports/again"));

        Assert.StartsWith($"No register was made: the demo cannot be written to {_house.In("exports", "again")} (", _house.Form.Problem, StringComparison.Ordinal);
    }
}

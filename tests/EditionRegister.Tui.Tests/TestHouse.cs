using EditionRegister.Domain;
using EditionRegister.Store;
using EditionRegister.Tests;
using EditionRegister.Tui.Asking;
using EditionRegister.Tui.Hall;
using EditionRegister.Tui.Pages;
using EditionRegister.UseCases;
using EditionRegister.UseCases.Registers;
using Microsoft.Extensions.Time.Testing;

namespace EditionRegister.Tui.Tests;

/// <summary>A house on a real register in a folder of its own, without a terminal: keys go in, lines come out.</summary>
internal sealed class TestHouse : IAsyncDisposable
{
    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("edreg-tui-");
    private readonly StoreQueue _store;

    private TestHouse(Func<RegisterFolder, Surroundings, Register> make)
    {
        Time = new FakeTimeProvider(new DateTimeOffset(2027, 3, 1, 10, 0, 0, TimeSpan.Zero));
        Register = make(new RegisterFolder(Path.Combine(_folder.FullName, "register")), new Surroundings(Time, new SeededRandomness("rooms"), _ => { }));
        _store = new StoreQueue(Register, run => run());
        Desk desk = new(_store, Time);
        House = new House(desk, Rooms.Of(desk), failure => { Bugs.Add(failure); return $"This is a bug in edreg: {failure.Message}."; });
    }

    public FakeTimeProvider Time { get; }

    /// <summary>The same register, for looking at what a key really did; what it writes comes as from another window.</summary>
    public Register Register { get; }

    public House House { get; }

    /// <summary>Mistakes of our own that were met; there are to be none.</summary>
    public List<Exception> Bugs { get; } = [];

    public string Message => House.Desk.Message;

    public Form Form => Assert.IsType<Form>(House.Asking);

    public Question Question => Assert.IsType<Question>(House.Asking);

    /// <summary>On the demo, as a year of its studio left it.</summary>
    public static Task<TestHouse> OnDemoAsync() => StartedAsync(new TestHouse((folder, surroundings) =>
    {
        DemoCopy.Into(folder);
        return Register.Open(folder, surroundings);
    }));

    /// <summary>On a register with nothing in it yet.</summary>
    public static Task<TestHouse> OnEmptyAsync() => StartedAsync(new TestHouse((folder, surroundings) =>
        new MakeRegister(surroundings).Run(folder, new RegisterSettings { Name = "Test studio", BaseUrl = "https://studio.example/p" })));

    /// <summary>Presses keys one after another, each when the one before is done.</summary>
    public async Task PressAsync(params string[] keys)
    {
        foreach (var key in keys)
        {
            await House.PressAsync(key);
        }
    }

    /// <summary>Types letter by letter, as into a filter.</summary>
    public Task TypeAsync(string text) => PressAsync([.. text.Select(letter => letter == ' ' ? "Space" : letter.ToString())]);

    /// <summary>Fills fields of the form that is open, by their labels, and saves it.</summary>
    public async Task FillAsync(params (string Label, string Text)[] answers)
    {
        foreach (var (label, text) in answers)
        {
            Form.FieldOf(label).Text = text;
        }

        await House.SaveAsync(Form);
    }

    /// <summary>The page as it stands on a screen, without the head and the keys.</summary>
    public string Screen(int width = 80, int height = 19) =>
        string.Join('\n', PagePicture.Of(House.Page, width, height).Lines.Select(line => line.ToString().TrimEnd())).TrimEnd();

    public async ValueTask DisposeAsync()
    {
        await _store.DisposeAsync();
        _folder.Delete(recursive: true);
    }

    private static async Task<TestHouse> StartedAsync(TestHouse house)
    {
        await house.House.StartAsync();

        return house;
    }
}

using EditionRegister.Store;
using EditionRegister.Tui.Asking;
using EditionRegister.Tui.Hall;
using EditionRegister.Tui.Pages;
using EditionRegister.Tui.Welcome;
using Microsoft.Extensions.Time.Testing;

namespace EditionRegister.Tui.Tests.Welcome;

/// <summary>The program started in a folder of its own where no register is.</summary>
internal sealed class WelcomeHouse : IDisposable
{
    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("edreg-welcome-");

    public WelcomeHouse()
    {
        FakeTimeProvider time = new(new DateTimeOffset(2027, 3, 1, 10, 0, 0, TimeSpan.Zero));
        Desk desk = new(null, time);
        TextUiServices services = new(new Surroundings(time, new SeededRandomness("welcome"), _ => { }), _ => null, _folder.FullName, null, (failure, _) => throw new InvalidOperationException("A bug met a user.", failure));
        House = new House(desk, [new Room(RoomName.Welcome, () => new WelcomePage(desk, services))], failure => services.OwnUp(failure, null));
    }

    public House House { get; }

    public Form Form => Assert.IsType<Form>(House.Asking);

    public string In(params string[] parts) => Path.Combine([_folder.FullName, .. parts]);

    /// <summary>Fills the form that is open, and saves it.</summary>
    public async Task FillAsync(params (string Label, string Text)[] answers)
    {
        foreach (var (label, text) in answers)
        {
            Form.FieldOf(label).Text = text;
        }

        await House.SaveAsync(Form);
    }

    public string Screen(int width) =>
        string.Join('\n', PagePicture.Of(House.Page, width, 19).Lines.Select(line => line.ToString().TrimEnd())).Replace(_folder.FullName, "/home/mira", StringComparison.Ordinal).TrimEnd();

    public void Dispose() => _folder.Delete(recursive: true);
}

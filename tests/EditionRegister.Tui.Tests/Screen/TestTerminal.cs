using EditionRegister.Tui.Hall;
using EditionRegister.Tui.Screen;
using Terminal.Gui.App;
using Terminal.Gui.Drivers;
using Terminal.Gui.Input;
using Terminal.Gui.Testing;
using Terminal.Gui.Time;

namespace EditionRegister.Tui.Tests.Screen;

/// <summary>The main window on the library's own terminal without a console: keys are injected, the screen is read as text.</summary>
internal sealed class TestTerminal : IDisposable
{
    private readonly IApplication _app = Application.Create(new VirtualTimeProvider());
    private readonly MainWindow _window;
    private readonly SessionToken _session;

    public TestTerminal(House house, int width = 80, int height = 24, bool hasColour = true, bool isAscii = false, string register = "Test studio", string folder = "/home/me/register")
    {
        House = house;
        _app.Init(DriverRegistry.Names.ANSI);
        _app.Driver!.SetScreenSize(width, height);
        _app.Driver.Force16Colors = true;
        _window = new MainWindow(house, register, folder, new Pen(new Palette(hasColour), isAscii));
        _session = _app.Begin(_window)!;

        // The library would have what follows an await run in its loop, which does not run here.
        SynchronizationContext.SetSynchronizationContext(null);
        _app.LayoutAndDraw(true);
    }

    public House House { get; }

    /// <summary>Presses keys as a terminal sends them, and waits for what comes of each.</summary>
    public async Task PressAsync(params Key[] keys)
    {
        foreach (var key in keys)
        {
            _app.InjectKey(key);
            await SettledAsync();
        }
    }

    public Task TypeAsync(string text) => PressAsync([.. text.Select(letter => new Key(letter))]);

    public async Task ClickAsync(int column, int row)
    {
        _app.InjectSequence(InputInjectionExtensions.LeftButtonClick(new System.Drawing.Point(column, row)));
        await SettledAsync();
    }

    public void Resize(int width, int height)
    {
        _app.Driver!.SetScreenSize(width, height);
        _app.LayoutAndDraw(true);
    }

    public string[] Lines => [.. Text.Split('\n')];

    public string Text
    {
        get
        {
            _app.LayoutAndDraw(true);

            return string.Join('\n', _app.Driver!.ToString()!.Replace("\r", "", StringComparison.Ordinal).Split('\n').Select(line => line.TrimEnd()));
        }
    }

    /// <summary>What would be sent to a terminal: text and its escape sequences.</summary>
    public string Ansi
    {
        get
        {
            _app.LayoutAndDraw(true);

            return _app.Driver!.ToAnsi();
        }
    }

    public void Dispose()
    {
        _app.End(_session);
        _window.Dispose();
        _app.Dispose();
    }

    private async Task SettledAsync()
    {
        await House.Settled;
        _app.LayoutAndDraw(true);
    }
}

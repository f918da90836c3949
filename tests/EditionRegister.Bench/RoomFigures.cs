using System.Diagnostics;
using System.Globalization;
using EditionRegister.Store;
using EditionRegister.Tui;
using EditionRegister.Tui.Hall;
using EditionRegister.Tui.Screen;
using EditionRegister.UseCases;
using Terminal.Gui.App;
using Terminal.Gui.Drivers;
using Terminal.Gui.Input;
using Terminal.Gui.Testing;
using Terminal.Gui.Time;

namespace EditionRegister.Bench;

/// <summary>From a key pressed in the plan chest to the whole screen drawn anew, on the library's terminal without a console.</summary>
internal static class RoomFigures
{
    /// <summary>Letters typed one by one into the filter, wiped again, and the list gone through by lines, pages and to its end.</summary>
    private static readonly string[] Typed = ["harbour", "tolland mi", "7kq4-m2x3", "drawer 11", "etude", "gallery", "nothing of the kind"];

    private static readonly Key[] Moves = [Key.CursorDown, Key.PageDown, Key.PageDown, Key.End, Key.PageUp, Key.CursorUp, Key.Home];

    public static int Run(string? kept)
    {
        var root = kept ?? Directory.CreateTempSubdirectory("edreg-bench-").FullName;

        try
        {
            Figures(root, 100_000, aim: 50);
            Figures(root, 1_000_000, aim: 100);
            FirstPicture.Run(root);

            return 0;
        }
        finally
        {
            if (kept is null)
            {
                Directory.Delete(root, recursive: true);
            }
        }
    }

    private static void Figures(string root, int impressions, int aim)
    {
        var folder = LargeRegister.Of(root, impressions);
        StoreQueue store = new(Register.Open(folder), run => run());
        Desk desk = new(store, TimeProvider.System);
        House house = new(desk, Rooms.Of(desk), failure => throw new InvalidOperationException("The bench met a bug.", failure));
        using var app = Application.Create(new VirtualTimeProvider());
        app.Init(DriverRegistry.Names.ANSI);
        app.Driver!.SetScreenSize(120, 40);
        using MainWindow window = new(house, "Bench", folder.FullPath, new Pen(new Palette(true), IsAscii: false));
        var session = app.Begin(window)!;
        SynchronizationContext.SetSynchronizationContext(null);

        var watch = Stopwatch.StartNew();
        house.StartAsync().GetAwaiter().GetResult();
        app.LayoutAndDraw(true);
        var first = watch.Elapsed.TotalMilliseconds;
        store.Idle().GetAwaiter().GetResult();
        var whole = watch.Elapsed.TotalMilliseconds;

        List<double> typed = [];
        List<double> moved = [];

        // The first round compiles.
        for (var round = 0; round < 4; round++)
        {
            foreach (var text in Typed)
            {
                Key[] keys = [new Key('/'), .. text.Select(letter => new Key(letter)), Key.Esc];
                typed.AddRange(keys.Select(key => Pressed(app, house, key)).Where(_ => round > 0));
            }

            moved.AddRange(Moves.Select(key => Pressed(app, house, key)).Where(_ => round > 0));
        }

        Print($"{impressions:#,0} impressions: the first list {first:0} ms after the room was entered, every sheet read after {whole:0} ms");
        Print($"  key to repaint, typing: {Summary(typed)}; aim 95 in 100 within {aim} ms: {Verdict(typed, aim)}");
        Print($"  key to repaint, moving: {Summary(moved)}; {Verdict(moved, aim)}");

        app.End(session);
        store.DisposeAsync().AsTask().GetAwaiter().GetResult();
    }

    private static double Pressed(IApplication app, House house, Key key)
    {
        var watch = Stopwatch.StartNew();
        app.InjectKey(key);
        house.Settled.GetAwaiter().GetResult();
        app.LayoutAndDraw(true);

        return watch.Elapsed.TotalMilliseconds;
    }

    private static string Summary(List<double> times) => FormattableString.Invariant($"median {At(times, 50):0.0} ms, 95 in 100 within {At(times, 95):0.0} ms, slowest {times.Max():0.0} ms");

    private static string Verdict(List<double> times, int aim) => At(times, 95) <= aim ? "met" : FormattableString.Invariant($"missed by {At(times, 95) - aim:0.0} ms");

    private static double At(List<double> times, int percent) => times.Order().ElementAt((times.Count - 1) * percent / 100);

    private static void Print(FormattableString line) => Console.WriteLine(line.ToString(CultureInfo.InvariantCulture));
}

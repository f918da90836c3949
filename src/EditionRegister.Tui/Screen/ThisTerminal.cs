using System.Runtime.InteropServices;
using Terminal.Gui.App;

namespace EditionRegister.Tui.Screen;

/// <summary>What has to be settled with the terminal before anything is drawn on it.</summary>
internal static class ThisTerminal
{
    private const ushort LooksForKeysPerSecond = 50;

    // 128 + SIGHUP, as shells count.
    private const int Hangup = 129;

    // A deed waits up to ten seconds for another program's; then it is refused.
    private static readonly TimeSpan LongestDeed = TimeSpan.FromSeconds(15);

    private static readonly string[] LocaleNames = ["LC_ALL", "LC_CTYPE", "LANG"];

    /// <summary>Begins with the terminal, as this program needs it.</summary>
    public static void Begin(IApplication app)
    {
        // The library looks for keys 25 times a second unless told: a key would wait up to 40 ms before anything is done about it.
        Application.MaximumIterationsPerSecond = LooksForKeysPerSecond;
        app.Init();

        // The sixteen colours are the user's own, chosen to be legible; more are not needed.
        app.Driver!.Force16Colors = true;
    }

    public static Pen Pen(Func<string, string?> environment) => new(
        new Palette(hasColour: string.IsNullOrEmpty(environment("NO_COLOR"))),
        IsAscii: !OperatingSystem.IsWindows() && !IsUtf8(environment));

    /// <summary>
    /// A kill that asks first ends the program as its own key does. Where the window is gone there is nothing left to draw on
    /// and nobody to press a key: what is under way in the register is finished, and the program ends at once.
    /// </summary>
    public static IDisposable LeaveOnSignals(IApplication app, Func<Task> finish) => new Signals(
        PosixSignalRegistration.Create(PosixSignal.SIGTERM, signal =>
        {
            signal.Cancel = true;
            app.Invoke(() => app.RequestStop());
        }),
        PosixSignalRegistration.Create(PosixSignal.SIGHUP, signal =>
        {
            signal.Cancel = true;
            finish().Wait(LongestDeed);
            Environment.Exit(Hangup);
        }));

    /// <summary>As POSIX reads its locale: the first of the three that is set says it.</summary>
    private static bool IsUtf8(Func<string, string?> environment)
    {
        var locale = LocaleNames.Select(environment).FirstOrDefault(value => !string.IsNullOrEmpty(value)) ?? "";

        return locale.Contains("UTF-8", StringComparison.OrdinalIgnoreCase) || locale.Contains("UTF8", StringComparison.OrdinalIgnoreCase);
    }

    private sealed class Signals(params IDisposable[] registered) : IDisposable
    {
        public void Dispose()
        {
            foreach (var one in registered)
            {
                one.Dispose();
            }
        }
    }
}

using System.Runtime.InteropServices;
using Terminal.Gui.App;

namespace EditionRegister.Tui.Screen;

/// <summary>What has to be settled with the terminal before anything is drawn on it.</summary>
internal static class ThisTerminal
{
    private static readonly string[] LocaleNames = ["LC_ALL", "LC_CTYPE", "LANG"];

    /// <summary>The sixteen colours are the user's own, chosen to be legible; more are not needed.</summary>
    public static void Prepare(IApplication app) => app.Driver!.Force16Colors = true;

    public static Pen Pen(Func<string, string?> environment) => new(
        new Palette(hasColour: string.IsNullOrEmpty(environment("NO_COLOR"))),
        IsAscii: !OperatingSystem.IsWindows() && !IsUtf8(environment));

    /// <summary>A window that is closed or a kill that asks first ends the program as its own key does: what is under way is finished.</summary>
    public static IDisposable LeaveOnSignals(IApplication app) => new Signals(
        PosixSignalRegistration.Create(PosixSignal.SIGTERM, signal => Leave(app, signal)),
        PosixSignalRegistration.Create(PosixSignal.SIGHUP, signal => Leave(app, signal)));

    /// <summary>As POSIX reads its locale: the first of the three that is set says it.</summary>
    private static bool IsUtf8(Func<string, string?> environment)
    {
        var locale = LocaleNames.Select(environment).FirstOrDefault(value => !string.IsNullOrEmpty(value)) ?? "";

        return locale.Contains("UTF-8", StringComparison.OrdinalIgnoreCase) || locale.Contains("UTF8", StringComparison.OrdinalIgnoreCase);
    }

    private static void Leave(IApplication app, PosixSignalContext signal)
    {
        signal.Cancel = true;
        app.Invoke(() => app.RequestStop());
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

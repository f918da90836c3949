using System.Diagnostics;
using System.Globalization;
using System.Text;

namespace EditionRegister.EndToEnd.Tests.Rooms;

/// <summary>The real program in a real terminal, tmux's own: keys are sent, the screen is read as a person sees it.</summary>
internal sealed class TmuxScreen : IDisposable
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(40);

    private readonly string _socket = "edreg-" + Guid.NewGuid().ToString("N")[..12];
    private readonly string _conf = Path.GetTempFileName();

    /// <param name="folder">Where the program is started.</param>
    /// <param name="command">As a shell takes it.</param>
    /// <param name="width">Columns.</param>
    /// <param name="height">Rows.</param>
    public TmuxScreen(string folder, string command, int width = 80, int height = 24)
    {
        // No status line, or the program has one row less; no waiting after Esc, or keys after it are taken for Alt.
        File.WriteAllText(_conf, "set -g status off\nset -g escape-time 0\nset -g default-terminal screen-256color\n");
        Tmux("new-session", "-d", "-s", "e2e", "-x", Figure(width), "-y", Figure(height), "-c", folder, command);
    }

    public string Text => string.Join('\n', Tmux("capture-pane", "-p", "-t", "e2e").Split('\n').Select(line => line.TrimEnd())).TrimEnd('\n');

    public string[] Lines => Text.Split('\n');

    /// <summary>Keys by tmux's names, such as Enter, Escape, Down, F2, or single characters.</summary>
    public TmuxScreen Press(params string[] keys)
    {
        foreach (var key in keys)
        {
            Tmux("send-keys", "-t", "e2e", key);

            // A key right behind Esc is a key with Alt, to any terminal program.
            Thread.Sleep(key == "Escape" ? 150 : 0);
            Settle();
        }

        return this;
    }

    /// <summary>Text as it stands, letter by letter.</summary>
    public TmuxScreen Type(string text)
    {
        Tmux("send-keys", "-t", "e2e", "-l", text);
        Settle();

        return this;
    }

    /// <summary>One answer after another, each closed with Enter; null leaves a field as it is.</summary>
    public TmuxScreen Answer(params string?[] answers)
    {
        foreach (var answer in answers)
        {
            if (answer is not null)
            {
                // What stands there is wiped first: to the end, then everything before it.
                Tmux("send-keys", "-t", "e2e", "End");
                Tmux("send-keys", "-t", "e2e", "-N", "60", "BSpace");
                Type(answer);
            }

            Press("Enter");
        }

        return this;
    }

    /// <summary>What tmux knows of the pane, by one of its formats.</summary>
    public string Ask(string format) => Tmux("display-message", "-p", "-t", "e2e", format).Trim();

    public TmuxScreen Resize(int width, int height)
    {
        Tmux("resize-window", "-t", "e2e", "-x", Figure(width), "-y", Figure(height));
        Settle();

        return this;
    }

    /// <summary>Waits until the screen says it.</summary>
    public TmuxScreen Sees(string text)
    {
        var clock = Stopwatch.StartNew();

        while (!Flat(Text).Contains(Flat(text), StringComparison.Ordinal))
        {
            Assert.True(clock.Elapsed < Patience, $"The screen never said “{text}”. It says:\n{Text}");
            Thread.Sleep(50);
        }

        Settle();

        return this;
    }

    public void Dispose()
    {
        Tmux("kill-server");
        File.Delete(_conf);
    }

    /// <summary>A sentence may be broken where a line ends, and a shell's in the midst of a word.</summary>
    private static string Flat(string text) => string.Concat(text.Where(letter => !char.IsWhiteSpace(letter)));

    /// <summary>Waits until the screen has stood still for a moment.</summary>
    private void Settle()
    {
        var clock = Stopwatch.StartNew();
        var before = "";

        for (var still = 0; still < 3 && clock.Elapsed < Patience;)
        {
            Thread.Sleep(25);
            var now = Tmux("capture-pane", "-p", "-t", "e2e");
            still = now == before ? still + 1 : 0;
            before = now;
        }
    }

    private string Tmux(params string[] arguments)
    {
        ProcessStartInfo start = new("tmux") { RedirectStandardOutput = true, RedirectStandardError = true, StandardOutputEncoding = Encoding.UTF8 };
        start.Environment["LC_ALL"] = "C.UTF-8";
        start.Environment.Remove("TMUX");

        foreach (var argument in (string[])["-u", "-L", _socket, "-f", _conf, .. arguments])
        {
            start.ArgumentList.Add(argument);
        }

        using var process = Process.Start(start)!;
        var output = process.StandardOutput.ReadToEnd();
        process.WaitForExit();

        return output;
    }

    private static string Figure(int number) => number.ToString(CultureInfo.InvariantCulture);
}

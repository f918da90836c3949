using System.Diagnostics;
using System.Globalization;

namespace EditionRegister.EndToEnd.Tests.Rooms;

/// <summary>How the text-mode UI begins and ends, whatever happens to it or to its terminal.</summary>
public sealed class TerminalTests : IDisposable
{
    private readonly RealProgram _edreg = new();

    public static bool HasTmux => Tools.Has("tmux");

    public static bool HasTmuxAndSqlite => HasTmux && Tools.Has("sqlite3");

    public void Dispose() => _edreg.Dispose();

    [Fact]
    public void Without_a_terminal_it_says_so_and_names_the_commands()
    {
        var ran = _edreg.Run();

        Assert.Equal(2, ran.ExitCode);
        Assert.Equal("There is no terminal here to show the register on. Every job is also a command:\n", ran.Errors);
        Assert.Contains("  certificate ", ran.Output, StringComparison.Ordinal);
    }

    [Fact(Skip = "tmux is not here", SkipUnless = nameof(HasTmux))]
    public void Left_by_its_own_key_it_gives_the_terminal_back()
    {
        using var screen = Open("echo before; ", "; echo \"ended with $?\"; sleep 60");

        screen.Press("q").Sees("Leave the register?").Press("y").Sees("ended with 0");

        Assert.Equal(["before", "ended with 0"], screen.Lines);
    }

    [Fact(Skip = "tmux is not here", SkipUnless = nameof(HasTmux))]
    public void Asked_to_end_by_another_program_it_gives_the_terminal_back()
    {
        using var screen = Open("echo before; ", "; echo \"ended with $?\"; sleep 60");
        screen.Press("?").Sees("explained");

        var shell = screen.Ask("#{pane_pid}");
        Tools.Run("sh", "-c", $"kill -TERM $(cat /proc/{shell}/task/{shell}/children)");

        screen.Sees("ended with 0");
        Assert.Equal(["before", "ended with 0"], screen.Lines);
    }

    [Fact(Skip = "tmux is not here", SkipUnless = nameof(HasTmux))]
    public void Where_its_window_is_closed_it_ends()
    {
        var screen = Open("", "");
        var program = int.Parse(screen.Ask("#{pane_pid}"), CultureInfo.InvariantCulture);

        Assert.True(Runs(program));
        screen.Dispose();

        Assert.True(SpinWait.SpinUntil(() => !Runs(program), TimeSpan.FromSeconds(20)), "The program still runs at a dead terminal.");
    }

    [Fact(Skip = "tmux is not here", SkipUnless = nameof(HasTmux))]
    public void A_window_made_smaller_and_larger_again_loses_nothing()
    {
        using var screen = Open("", "");
        var before = screen.Text;

        screen.Resize(70, 20).Sees("The register needs 80 × 24").Resize(80, 24).Sees("Plan chest");

        Assert.Equal(before, screen.Text);
    }

    [Fact(Skip = "tmux is not here", SkipUnless = nameof(HasTmux))]
    public void A_terminal_without_utf_8_is_given_ascii()
    {
        using var screen = Open("LC_ALL=C ", "");

        Assert.True(System.Text.Ascii.IsValid(screen.Text), screen.Text);
    }

    [Fact(Skip = "tmux or sqlite3 is not here", SkipUnless = nameof(HasTmuxAndSqlite))]
    public void A_register_newer_than_the_program_is_refused_in_words()
    {
        _edreg.Do("new", "studio");
        Tools.Run("sqlite3", _edreg.In("studio", "register.db"), "PRAGMA user_version = 99; PRAGMA ignore_check_constraints = 1; DROP TRIGGER register_names_its_entry_when_changed; UPDATE register SET schema = 99;");
        using TmuxScreen screen = new(_edreg.Folder, $"LC_ALL=C.UTF-8 dotnet exec {RealProgram.Path} --register studio; echo \"ended with $?\"; sleep 60");

        screen.Sees("ended with 3");

        screen.Sees("was written by a newer edreg");
    }

    private static bool Runs(int program)
    {
        try
        {
            using var found = Process.GetProcessById(program);

            return !found.HasExited;
        }
        catch (ArgumentException)
        {
            return false;
        }
    }

    private TmuxScreen Open(string before, string after)
    {
        _edreg.Do("demo", "--to", "demo");
        var shell = before.Length + after.Length > 0;
        var locale = before.StartsWith("LC_ALL", StringComparison.Ordinal) ? "" : "LC_ALL=C.UTF-8 ";
        var run = $"dotnet exec {RealProgram.Path} --register {_edreg.In("demo", "register")}";
        TmuxScreen screen = new(_edreg.Folder, shell ? $"{before}{locale}{run}{after}" : $"exec env {locale}{run}");
        screen.Sees("Plan chest");

        return screen.Sees("Harbour");
    }
}

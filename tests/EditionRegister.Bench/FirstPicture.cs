using System.Diagnostics;
using System.Globalization;
using System.Text;

namespace EditionRegister.Bench;

/// <summary>
/// From the start of the real program, ReadyToRun, to its first picture: it runs in tmux, whose terminal answers as a real one does, under
/// `script`, which writes down when each byte came. An empty program is started the same way beside it.
/// </summary>
internal static class FirstPicture
{
    private const int Rounds = 15;
    private const double Aim = 8;

    /// <summary>What stands on the first picture, and the pointer at the first row of the list.</summary>
    private const string Frame = "Plan chest";
    private const string Row = "›";

    public static void Run(string root)
    {
        var published = Directory.CreateTempSubdirectory("edreg-bench-rooms-").FullName;

        try
        {
            var edreg = Programs.Publish("src/EditionRegister.Cli", "edreg", published);
            var empty = Programs.Publish("tests/EditionRegister.Empty", "EditionRegister.Empty", published);
            var demo = Path.Combine(published, "demo");
            Programs.Time(edreg, "demo", "--to", demo);

            var nothing = Programs.Median(Enumerable.Range(0, Rounds).Select(_ => Programs.Time(empty)));
            Report("the demo", edreg, Path.Combine(demo, "register"), nothing);

            foreach (var impressions in (int[])[100_000, 1_000_000])
            {
                Report(FormattableString.Invariant($"{impressions:#,0} impressions"), edreg, LargeRegister.Of(root, impressions).FullPath, nothing);
            }
        }
        finally
        {
            Directory.Delete(published, recursive: true);
        }
    }

    private static void Report(string what, string edreg, string register, double nothing)
    {
        var rounds = Enumerable.Range(0, Rounds).Select(_ => Once(edreg, register)).ToList();
        var (picture, list) = (Programs.Median(rounds.Select(round => round.Picture)), Programs.Median(rounds.Select(round => round.List)));
        var ratio = picture / nothing;
        var verdict = ratio <= Aim ? "met" : FormattableString.Invariant($"missed by {ratio - Aim:0.0}");
        Console.WriteLine(string.Create(
            CultureInfo.InvariantCulture,
            $"start to first picture of {what} : empty program = {picture:0} ms : {nothing:0} ms = {ratio:0.0}; aim {Aim:0.0}: {verdict}; its list after {list:0} ms"));
    }

    private static (double Picture, double List) Once(string edreg, string register)
    {
        var folder = Directory.CreateTempSubdirectory("edreg-bench-script-").FullName;
        var socket = Path.GetFileName(folder);
        var (shown, timing) = (Path.Combine(folder, "shown"), Path.Combine(folder, "timing"));

        try
        {
            Tmux(socket, "new-session", "-d", "-x", "120", "-y", "40", $"script -q -f -O '{shown}' -T '{timing}' -c \"'{edreg}' --register '{register}'\"");

            for (var clock = Stopwatch.StartNew(); clock.Elapsed < TimeSpan.FromSeconds(20); Thread.Sleep(20))
            {
                if (File.Exists(shown) && At(shown, timing, Frame) is { } picture && At(shown, timing, Row) is { } list)
                {
                    return (picture * 1000, list * 1000);
                }
            }

            throw new InvalidOperationException("No picture came within twenty seconds.");
        }
        finally
        {
            // `script` outlives the terminal it was started in, and the program finishes what it reads: neither is to slow the next round.
            using (var ended = Process.Start("pkill", ["-KILL", "-f", Path.GetDirectoryName(edreg)!]))
            {
                ended.WaitForExit();
            }

            Tmux(socket, "kill-server");
            Directory.Delete(folder, recursive: true);
        }
    }

    /// <summary>When something first stood on the screen, in seconds; null where it does not yet.</summary>
    private static double? At(string shown, string timing, string what)
    {
        var text = Read(shown);
        // The first line is script's own.
        var begins = text.IndexOf('\n', StringComparison.Ordinal) + 1;
        var at = text.IndexOf(what, begins, StringComparison.Ordinal);

        if (at < 0)
        {
            return null;
        }

        var bytes = Encoding.UTF8.GetByteCount(text.AsSpan(begins, at - begins));
        var (seconds, read) = (0.0, 0L);

        foreach (var line in Read(timing).Split('\n', StringSplitOptions.RemoveEmptyEntries).Select(line => line.Split(' ')))
        {
            seconds += double.Parse(line[^2], CultureInfo.InvariantCulture);
            read += long.Parse(line[^1], CultureInfo.InvariantCulture);

            if (read > bytes)
            {
                return seconds;
            }
        }

        return null;
    }

    private static string Read(string file)
    {
        using FileStream stream = new(file, FileMode.Open, FileAccess.Read, FileShare.ReadWrite);
        using StreamReader reader = new(stream, Encoding.UTF8);

        return reader.ReadToEnd();
    }

    private static void Tmux(string socket, params string[] arguments)
    {
        ProcessStartInfo start = new("tmux") { RedirectStandardError = true };
        start.Environment["LC_ALL"] = "C.UTF-8";

        foreach (var argument in (string[])["-u", "-L", socket, "-f", "/dev/null", .. arguments])
        {
            start.ArgumentList.Add(argument);
        }

        using var process = Process.Start(start)!;
        process.WaitForExit();
    }
}

using System.Diagnostics;
using System.Globalization;

namespace EditionRegister.Bench.Readings;

/// <summary>
/// How fast a reader is on ordinary texts, and whether any text makes it slow: the time for a character at 64 KB against 32 KB, which
/// doubles where the work grows with the square, and against ordinary texts. Processor time of the whole process, so that a busy machine
/// does not count; the best of several runs.
/// </summary>
internal static class Slowness
{
    private const int Half = 32 * 1024;
    private const int Whole = 64 * 1024;
    private const int Runs = 5;
    private const int RunsInDoubt = 40;
    private const double Steep = 1.5;

    // What the clock of the processor's time can tell: in seconds, and in nanoseconds a character of these texts.
    private const double Clock = 1e-6;
    private const double Shortest = 10;
    private const double ASecond = 100_000;

    public static void Print(string name, Action<string> read, IReadOnlyList<string> ordinary, TextWriter output)
    {
        var (texts, nanoseconds) = Ordinary(read, ordinary);
        output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{name}: {texts:#,0} ordinary texts a second on one core ({Aim.AtLeast(ASecond, texts, "")}), {nanoseconds:0} ns a character; adversarial texts of 64 KB:"));

        var measured = AdversarialTexts.All.Select(text => Measured(read, text.Name, text.Make)).ToList();
        var slowest = measured.MaxBy(one => one.Whole);
        var steepest = measured.MaxBy(one => Steepness(one.Half, one.Whole));
        output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"  the slowest takes {slowest.Whole:0} ns a character, {slowest.Whole / nanoseconds:0.0} times an ordinary one, {slowest.Whole * Whole / 1e6:0.0} ms in all: {slowest.Name}"));
        output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"  a character at 64 KB against 32 KB takes at most {Steepness(steepest.Half, steepest.Whole):0.00} times as long ({Aim.AtMost(Steep, Steepness(steepest.Half, steepest.Whole), " times")}; 2 would be the square): {steepest.Name}"));
    }

    private static (double TextsASecond, double NanosecondsACharacter) Ordinary(Action<string> read, IReadOnlyList<string> texts)
    {
        var characters = texts.Sum(text => (long)text.Length);
        var best = double.MaxValue;
        var all = Stopwatch.StartNew();

        while (all.ElapsedMilliseconds < 1_500)
        {
            var before = Environment.CpuUsage.TotalTime;

            foreach (var text in texts)
            {
                read(text);
            }

            best = Math.Min(best, (Environment.CpuUsage.TotalTime - before).TotalSeconds);
        }

        best = Math.Max(best, Clock);

        return (texts.Count / best, best * 1e9 / characters);
    }

    // Times too short for the clock are no sign of anything.
    private static double Steepness(double half, double whole) => Math.Max(whole, Shortest) / Math.Max(half, Shortest);

    // A collection of garbage in between looks like a steep text: what seems steep is measured again, longer.
    private static (string Name, double Half, double Whole) Measured(Action<string> read, string name, Func<int, string> make)
    {
        var (half, whole) = (PerCharacter(read, make(Half), Runs), PerCharacter(read, make(Whole), Runs));

        return Steepness(half, whole) < Steep ? (name, half, whole) : (name, PerCharacter(read, make(Half), RunsInDoubt), PerCharacter(read, make(Whole), RunsInDoubt));
    }

    private static double PerCharacter(Action<string> read, string text, int runs)
    {
        var best = double.MaxValue;

        for (var run = 0; run < runs; run++)
        {
            var before = Environment.CpuUsage.TotalTime;
            read(text);
            best = Math.Min(best, (Environment.CpuUsage.TotalTime - before).TotalSeconds);
        }

        return Math.Max(best, Clock) * 1e9 / text.Length;
    }
}

using System.Diagnostics;
using System.Runtime.InteropServices;

namespace EditionRegister.Bench;

/// <summary>Publishes programs ReadyToRun into a temp folder and times them as whole processes.</summary>
internal static class Programs
{
    /// <summary>The path of the published program.</summary>
    public static string Publish(string project, string name, string into)
    {
        var output = Path.Combine(into, name);
        Run("dotnet", ["publish", project, "-c", "Release", "-r", RuntimeInformation.RuntimeIdentifier, "--self-contained", "false", "-p:PublishReadyToRun=true", "-p:RestoreLockedMode=false", "-p:NuGetLockFilePath=obj/publish.lock.json", "-o", output, "-v", "quiet"]);

        return Path.Combine(output, OperatingSystem.IsWindows() ? name + ".exe" : name);
    }

    /// <summary>Milliseconds of the whole process, its output read and thrown away.</summary>
    public static double Time(string program, params string[] arguments)
    {
        var watch = Stopwatch.StartNew();
        Run(program, arguments);

        return watch.Elapsed.TotalMilliseconds;
    }

    public static double Median(IEnumerable<double> values)
    {
        var sorted = values.Order().ToList();

        return sorted[sorted.Count / 2];
    }

    private static void Run(string program, string[] arguments)
    {
        ProcessStartInfo start = new(program) { RedirectStandardOutput = true, RedirectStandardError = true };

        foreach (var argument in arguments)
        {
            start.ArgumentList.Add(argument);
        }

        using var process = Process.Start(start) ?? throw new InvalidOperationException($"{program} did not start.");
        var errors = process.StandardError.ReadToEndAsync();
        process.StandardOutput.ReadToEnd();
        process.WaitForExit();

        if (process.ExitCode != 0)
        {
            throw new InvalidOperationException($"{program} ended with {process.ExitCode}: {errors.Result}");
        }
    }
}

using System.Diagnostics;

namespace EditionRegister.EndToEnd.Tests;

/// <summary>What one run of the real program gave.</summary>
public sealed record Ran(int ExitCode, string Output, string Errors);

/// <summary>Runs the real program as a process of its own, in a folder of its own.</summary>
public sealed class RealProgram : IDisposable
{
    public static string Path { get; } = System.IO.Path.Combine(AppContext.BaseDirectory, "edreg.dll");

    /// <param name="root">Where its folder is made; among the temporary files unless said.</param>
    public RealProgram(string? root = null)
    {
        Folder = System.IO.Path.Combine(root ?? System.IO.Path.GetTempPath(), "edreg-" + Guid.NewGuid().ToString("N")[..10]);
        Directory.CreateDirectory(Folder);
    }

    public string Folder { get; }

    /// <summary>What its processes find in their environment beside what the tests have in theirs.</summary>
    public Dictionary<string, string> Environment { get; } = new(StringComparer.Ordinal);

    public string In(params string[] parts) => System.IO.Path.Combine([Folder, .. parts]);

    public Ran Run(params string[] arguments)
    {
        using var process = Start(arguments);

        return Finish(process);
    }

    /// <summary>As <see cref="Run"/>, and it must have gone well.</summary>
    public string Do(params string[] arguments)
    {
        var ran = Run(arguments);
        Assert.True(ran.ExitCode == 0, $"edreg {string.Join(' ', arguments)} ended with {ran.ExitCode}: {ran.Errors}{ran.Output}");

        return ran.Output;
    }

    public Process Start(params string[] arguments)
    {
        ProcessStartInfo start = new("dotnet") { RedirectStandardOutput = true, RedirectStandardError = true, WorkingDirectory = Folder };

        foreach (var argument in new[] { "exec", Path }.Concat(arguments))
        {
            start.ArgumentList.Add(argument);
        }

        foreach (var (name, value) in Environment)
        {
            start.Environment[name] = value;
        }

        return Process.Start(start)!;
    }

    public static Ran Finish(Process process)
    {
        var errors = process.StandardError.ReadToEndAsync();
        var output = process.StandardOutput.ReadToEnd();
        process.WaitForExit();

        return new Ran(process.ExitCode, output, errors.Result);
    }

    public void Dispose() => Directory.Delete(Folder, recursive: true);
}

using System.Diagnostics;

namespace EditionRegister.Formats.Tests;

/// <summary>A program that a test leans on; where it is missing the test is skipped by name, unless EDREG_REQUIRE_TOOLS is 1.</summary>
internal static class Tool
{
    public static byte[] Run(string name, params string[] arguments)
    {
        var path = Find(name);
        Assert.SkipUnless(path is not null || Environment.GetEnvironmentVariable("EDREG_REQUIRE_TOOLS") == "1", $"{name} is not on this machine.");
        Assert.True(path is not null, $"{name} is not on this machine, and EDREG_REQUIRE_TOOLS asks for it.");

        using var process = Process.Start(new ProcessStartInfo(path, arguments) { RedirectStandardOutput = true, RedirectStandardError = true })!;
        var errors = process.StandardError.ReadToEndAsync();
        using MemoryStream output = new();
        process.StandardOutput.BaseStream.CopyTo(output);
        process.WaitForExit();
        Assert.True(process.ExitCode == 0, $"{name} ended with {process.ExitCode}: {errors.Result}");
        return output.ToArray();
    }

    private static string? Find(string name) =>
        (Environment.GetEnvironmentVariable("PATH") ?? "").Split(Path.PathSeparator)
            .SelectMany(folder => new[] { Path.Combine(folder, name), Path.Combine(folder, name + ".exe") })
            .FirstOrDefault(File.Exists);
}

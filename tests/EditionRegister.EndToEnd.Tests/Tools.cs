using System.ComponentModel;
using System.Diagnostics;

namespace EditionRegister.EndToEnd.Tests;

/// <summary>Programs of the machine that tests borrow. Where EDREG_REQUIRE_TOOLS is 1 they count as there, so that a missing one fails instead of skipping.</summary>
internal static class Tools
{
    public static bool Has(string tool)
    {
        if (Environment.GetEnvironmentVariable("EDREG_REQUIRE_TOOLS") == "1")
        {
            return true;
        }

        return (Environment.GetEnvironmentVariable("PATH") ?? "").Split(Path.PathSeparator).Any(folder => File.Exists(Path.Combine(folder, tool)));
    }

    public static string Run(string tool, params string[] arguments)
    {
        ProcessStartInfo start = new(tool) { RedirectStandardOutput = true };

        foreach (var argument in arguments)
        {
            start.ArgumentList.Add(argument);
        }

        try
        {
            using var process = Process.Start(start)!;
            var output = process.StandardOutput.ReadToEnd();
            process.WaitForExit();
            Assert.Equal(0, process.ExitCode);

            return output;
        }
        catch (Win32Exception missing)
        {
            throw new InvalidOperationException($"{tool} is not on this machine.", missing);
        }
    }
}

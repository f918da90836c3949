using System.Diagnostics;

namespace EditionRegister.UseCases.Tests.ReadingIn;

/// <summary>The spreadsheet nobody here wrote: museum inscriptions (CC0; sources in the README of its folder), made by the awk script beside them.</summary>
internal static class MuseumSpreadsheet
{
    public static string Make(TempRegister temp)
    {
        var hasAwk = (Environment.GetEnvironmentVariable("PATH") ?? "").Split(Path.PathSeparator).Any(path => File.Exists(Path.Combine(path, "awk")));
        Assert.SkipUnless(hasAwk || Environment.GetEnvironmentVariable("EDREG_REQUIRE_TOOLS") == "1", "awk makes the spreadsheet");
        var folder = Path.Combine(Approved.TestsFolder, "EditionRegister.EndToEnd.Tests", "museum");
        ProcessStartInfo awk = new("awk") { RedirectStandardOutput = true };
        awk.ArgumentList.Add("-f");
        awk.ArgumentList.Add(Path.Combine(folder, "make-spreadsheet.awk"));
        awk.ArgumentList.Add(Path.Combine(folder, "inscriptions-cc0.tsv"));
        using var process = Process.Start(awk)!;

        return temp.File("museum.csv", process.StandardOutput.ReadToEnd());
    }
}

using System.Text.RegularExpressions;
using EditionRegister.Tests;

namespace EditionRegister.EndToEnd.Tests.Rooms;

/// <summary>
/// Holds a screen against its approved text. What differs from day to day and from run to run (today, codes, hashes, handles, the folder)
/// is written as signs of the same width. EDREG_APPROVE=1 writes the approved text anew.
/// </summary>
internal static partial class ApprovedScreen
{
    public static void Matches(string name, string screen, string folder)
    {
        var file = Path.Combine(Clone.Folder, "tests", "EditionRegister.EndToEnd.Tests", "Rooms", "screens", name + ".txt");
        var masked = Masked(screen, folder) + "\n";

        if (Environment.GetEnvironmentVariable("EDREG_APPROVE") == "1")
        {
            Directory.CreateDirectory(Path.GetDirectoryName(file)!);
            File.WriteAllText(file, masked);
        }

        Assert.Equal(File.Exists(file) ? File.ReadAllText(file).Replace("\r\n", "\n", StringComparison.Ordinal) : $"(no approved text {name})", masked);
    }

    private static string Masked(string screen, string folder)
    {
        var text = screen.Replace(folder, new string('~', folder.Length), StringComparison.Ordinal);
        text = Hashes().Replace(text, match => new string('#', match.Length));
        text = Handles().Replace(text, match => new string('#', match.Length));
        text = Codes().Replace(text, match => match.Value[^1] == '…' ? "XXXX-XXXX"[..(match.Length - 1)] + "…" : "XXXX-XXXX");
        text = Moments().Replace(text, match => "YYYY-MM-DD" + Digits().Replace(match.Groups["time"].Value, "0"));

        return text;
    }

    [GeneratedRegex(@"\b[2-9A-HJ-NP-Z]{4}-(?:[2-9A-HJ-NP-Z]{4}\b|[2-9A-HJ-NP-Z]{0,3}…)")]
    private static partial Regex Codes();

    [GeneratedRegex(@"\b20[0-9]{2}-[0-9]{2}-[0-9]{2}(?<time>[T ][0-9:.]+Z?)?")]
    private static partial Regex Moments();

    [GeneratedRegex("(?<=head )[0-9a-f]{8}(?: [0-9a-f]{8})*")]
    private static partial Regex Hashes();

    [GeneratedRegex("(?<=called )[0-9A-Z]{6,}(?= by)")]
    private static partial Regex Handles();

    [GeneratedRegex("[0-9]")]
    private static partial Regex Digits();
}

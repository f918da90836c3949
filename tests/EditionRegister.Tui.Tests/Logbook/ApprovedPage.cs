using System.Text.RegularExpressions;

namespace EditionRegister.Tui.Tests.Logbook;

/// <summary>Whole screens of the logbook and the findings, approved once and kept beside the tests. With EDREG_APPROVE=1 the screen of the day is written as the approved one, to be read before it is committed.</summary>
internal static partial class ApprovedPage
{
    /// <summary>Digits of hashes are left out: they are another test's matter, and every change to the demo's story changes them all.</summary>
    public static void Is(string screen, string room, string name)
    {
        screen = Hashes().Replace(screen, "########");
        var file = Path.Combine(Clone.Folder, "tests", "EditionRegister.Tui.Tests", room, "Screens", name + ".txt");

        if (Environment.GetEnvironmentVariable("EDREG_APPROVE") == "1")
        {
            File.WriteAllText(file, screen + "\n");
        }

        Assert.True(File.Exists(file), $"No approved screen {file}. The screen was:\n{screen}");
        Assert.Equal(File.ReadAllText(file).ReplaceLineEndings("\n").TrimEnd('\n'), screen);
    }

    [GeneratedRegex(@"\b[0-9a-f]{8}\b", RegexOptions.CultureInvariant)]
    private static partial Regex Hashes();
}

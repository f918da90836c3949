namespace EditionRegister.Tui.Tests.Logbook;

/// <summary>Whole screens of the logbook and the findings, approved once and kept beside the tests. With EDREG_APPROVE=1 the screen of the day is written as the approved one, to be read before it is committed.</summary>
internal static class ApprovedPage
{
    public static void Is(string screen, string room, string name)
    {
        var file = Path.Combine(Clone.Folder, "tests", "EditionRegister.Tui.Tests", room, "Screens", name + ".txt");

        if (Environment.GetEnvironmentVariable("EDREG_APPROVE") == "1")
        {
            File.WriteAllText(file, screen + "\n");
        }

        Assert.True(File.Exists(file), $"No approved screen {file}. The screen was:\n{screen}");
        Assert.Equal(File.ReadAllText(file).ReplaceLineEndings("\n").TrimEnd('\n'), screen);
    }
}

namespace EditionRegister.Tui.Tests;

/// <summary>Whole screens approved once and kept beside the tests. With EDREG_APPROVE=1 the screen of the day is written as the approved one, to be read before it is committed.</summary>
internal static class ApprovedScreen
{
    /// <param name="screen">What the page shows.</param>
    /// <param name="name">The file's, without its ending.</param>
    /// <param name="room">The folder of the room's tests.</param>
    public static void Is(string screen, string name, string room = "PlanChest")
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

namespace EditionRegister.Tui.Tests.PlanChest;

/// <summary>Whole screens approved once and kept beside the tests. With EDREG_APPROVE=1 the screen of the day is written as the approved one, to be read before it is committed.</summary>
internal static class ApprovedScreen
{
    private static readonly string Folder = Path.Combine(Clone.Folder, "tests", "EditionRegister.Tui.Tests", "PlanChest", "Screens");

    public static void Is(string screen, string name)
    {
        var file = Path.Combine(Folder, name + ".txt");

        if (Environment.GetEnvironmentVariable("EDREG_APPROVE") == "1")
        {
            File.WriteAllText(file, screen + "\n");
        }

        Assert.True(File.Exists(file), $"No approved screen {file}. The screen was:\n{screen}");
        Assert.Equal(File.ReadAllText(file).ReplaceLineEndings("\n").TrimEnd('\n'), screen);
    }
}

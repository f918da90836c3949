namespace EditionRegister.Tui.Tests.Bench;

/// <summary>Whole screens approved once and kept beside the tests. With EDREG_APPROVE=1 the screen of the day is written as the approved one, to be read before it is committed.</summary>
internal static class BenchScreens
{
    /// <summary>The page at 80 columns by 19 and at 120 by 35, under one name.</summary>
    public static void Are(TestHouse house, string name)
    {
        foreach (var (width, height) in new[] { (80, 19), (120, 35) })
        {
            var file = Path.Combine(Clone.Folder, "tests", "EditionRegister.Tui.Tests", "Bench", "screens", $"{name}-{width}x{height}.txt");
            var screen = house.Screen(width, height) + "\n";

            if (Environment.GetEnvironmentVariable("EDREG_APPROVE") == "1")
            {
                File.WriteAllText(file, screen);
            }

            Assert.True(File.Exists(file), $"No approved screen {file}. It was:\n{screen}");
            Assert.Equal(File.ReadAllText(file).ReplaceLineEndings("\n"), screen);
        }
    }
}

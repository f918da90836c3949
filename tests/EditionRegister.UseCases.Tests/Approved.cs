namespace EditionRegister.UseCases.Tests;

/// <summary>Long texts approved once and kept beside the tests. With EDREG_APPROVE=1 the text of the day is written as the approved one, to be read before it is committed.</summary>
internal static class Approved
{
    /// <summary>The tests folder of the clone, wherever the test runs from.</summary>
    public static string TestsFolder { get; } = Path.Combine(Clone.Folder, "tests");

    public static void Is(string text, params string[] path)
    {
        var file = Path.Combine([TestsFolder, .. path]);

        if (Environment.GetEnvironmentVariable("EDREG_APPROVE") == "1")
        {
            File.WriteAllText(file, text);
        }

        Assert.True(File.Exists(file), $"No approved text {file}. The text was:\n{text}");
        Assert.Equal(File.ReadAllText(file).ReplaceLineEndings("\n"), text.ReplaceLineEndings("\n"));
    }
}

namespace EditionRegister.UseCases.Tests;

/// <summary>Long texts approved once and kept beside the tests. With EDREG_APPROVE=1 the text of the day is written as the approved one, to be read before it is committed.</summary>
internal static class Approved
{
    /// <summary>The tests folder of the clone, wherever the test runs from.</summary>
    public static string TestsFolder { get; } = Find();

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

    private static string Find()
    {
        for (var at = new DirectoryInfo(AppContext.BaseDirectory); at is not null; at = at.Parent)
        {
            if (File.Exists(Path.Combine(at.FullName, "EditionRegister.sln")))
            {
                return Path.Combine(at.FullName, "tests");
            }
        }

        throw new InvalidOperationException("The tests run outside a clone.");
    }
}

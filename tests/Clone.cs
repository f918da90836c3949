namespace EditionRegister.Tests;

/// <summary>The clone that the tests run in, found from wherever they were built.</summary>
internal static class Clone
{
    public static string Folder { get; } = Find();

    private static string Find()
    {
        for (var at = new DirectoryInfo(AppContext.BaseDirectory); at is not null; at = at.Parent)
        {
            if (File.Exists(Path.Combine(at.FullName, "EditionRegister.sln")))
            {
                return at.FullName;
            }
        }

        throw new InvalidOperationException("The tests run outside a clone.");
    }
}

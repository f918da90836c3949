namespace EditionRegister.Formats.Tests;

/// <summary>A folder that is gone when the test is.</summary>
public sealed class TempFolder : IDisposable
{
    public string Path { get; } = Directory.CreateTempSubdirectory("edreg-formats-").FullName;

    public string Write(string relativeName, string text)
    {
        var path = System.IO.Path.Combine(Path, relativeName);
        Directory.CreateDirectory(System.IO.Path.GetDirectoryName(path)!);
        File.WriteAllText(path, text);
        return path;
    }

    public void Dispose() => Directory.Delete(Path, recursive: true);
}

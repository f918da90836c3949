using EditionRegister.Store;
using EditionRegister.UseCases.Demo;

namespace EditionRegister.Tests;

/// <summary>The demo's register, made once for all tests of a run: its story is long, and every telling of it is the same.</summary>
internal static class DemoCopy
{
    private static readonly Lazy<string> Made = new(Make);

    /// <summary>Copies it into a folder that is not there yet.</summary>
    public static RegisterFolder Into(RegisterFolder folder)
    {
        foreach (var file in Directory.GetFiles(Made.Value, "*", SearchOption.AllDirectories))
        {
            var copy = Path.Combine(folder.FullPath, Path.GetRelativePath(Made.Value, file));
            Directory.CreateDirectory(Path.GetDirectoryName(copy)!);
            File.Copy(file, copy);
        }

        return folder;
    }

    private static string Make()
    {
        var folder = Directory.CreateTempSubdirectory("edreg-demo-").FullName;
        AppDomain.CurrentDomain.ProcessExit += (_, _) => Directory.Delete(folder, recursive: true);
        new MakeDemo(_ => { }).Run(new RegisterFolder(Path.Combine(folder, "register")));

        return Path.Combine(folder, "register");
    }
}

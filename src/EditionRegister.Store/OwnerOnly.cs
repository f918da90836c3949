namespace EditionRegister.Store;

/// <summary>Folders and files that only their owner may read; every file is written beside its place and renamed into it.</summary>
public static class OwnerOnly
{
    private const UnixFileMode Folder = UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute;
    private const UnixFileMode Plain = UnixFileMode.UserRead | UnixFileMode.UserWrite;

    public static void MakeFolder(string path)
    {
        if (OperatingSystem.IsWindows())
        {
            Directory.CreateDirectory(path);
        }
        else
        {
            Directory.CreateDirectory(path, Folder);
        }
    }

    /// <summary>Makes a file that must not exist yet.</summary>
    public static FileStream Make(string path) => new(path, Options(FileMode.CreateNew));

    public static FileStream Append(string path) => new(path, Options(FileMode.Append));

    /// <summary>Either the whole new file stands at <paramref name="path"/>, or what stood there before.</summary>
    public static void Write(string path, Action<Stream> write)
    {
        MakeFolder(Path.GetDirectoryName(Path.GetFullPath(path))!);
        var beside = path + "." + Guid.NewGuid().ToString("N")[..8] + ".part";

        try
        {
            using (var stream = Make(beside))
            {
                write(stream);
                stream.Flush(flushToDisk: true);
            }

            File.Move(beside, path, overwrite: true);
        }
        finally
        {
            File.Delete(beside);
        }
    }

    private static FileStreamOptions Options(FileMode mode)
    {
        FileStreamOptions options = new() { Mode = mode, Access = FileAccess.Write, Share = FileShare.Read };

        if (!OperatingSystem.IsWindows())
        {
            options.UnixCreateMode = Plain;
        }

        return options;
    }
}

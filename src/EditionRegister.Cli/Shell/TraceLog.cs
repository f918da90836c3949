using System.Globalization;
using System.Text;

namespace EditionRegister.Cli;

/// <summary>Appends a trace to log.txt in the register's folder, or to one in a new folder of the user's own among the temporary files.</summary>
internal static class TraceLog
{
    /// <summary>The file written to; null where none could be.</summary>
    public static string? Write(Exception exception, string? registerFolder, TimeProvider time)
    {
        var at = time.GetUtcNow().ToString("yyyy-MM-dd'T'HH:mm:ss.fff'Z'", CultureInfo.InvariantCulture);
        var entry = $"{at} edreg {VersionCommand.ProgramVersion}\n{exception}\n\n";

        // A fresh folder, for a known name among everybody's temporary files could be somebody else's link.
        return (registerFolder is null ? null : Append(() => registerFolder, entry))
            ?? Append(() => Directory.CreateTempSubdirectory("edreg-").FullName, entry);
    }

    private static string? Append(Func<string> folder, string entry)
    {
        try
        {
            var file = Path.Combine(folder(), "log.txt");
            using FileStream stream = new(file, OwnerOnly());
            stream.Write(Encoding.UTF8.GetBytes(entry));

            return file;
        }
        catch (Exception exception) when (exception is IOException or UnauthorizedAccessException)
        {
            return null;
        }
    }

    private static FileStreamOptions OwnerOnly()
    {
        FileStreamOptions options = new() { Mode = FileMode.Append, Access = FileAccess.Write, Share = FileShare.ReadWrite };

        if (!OperatingSystem.IsWindows())
        {
            options.UnixCreateMode = UnixFileMode.UserRead | UnixFileMode.UserWrite;
        }

        return options;
    }
}

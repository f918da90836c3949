using EditionRegister.Store;

namespace EditionRegister.UseCases.Registers;

/// <summary>The copies of a register that lie in its backups folder.</summary>
public static class Backups
{
    /// <summary>The newest copy, as a path from the register's folder on; null where there is none.</summary>
    public static string? Newest(RegisterFolder folder)
    {
        DirectoryInfo backups = new(folder.Backups);
        var newest = backups.Exists ? backups.EnumerateFiles("*.db").MaxBy(file => file.LastWriteTimeUtc) : null;

        return newest is null ? null : Path.GetRelativePath(folder.FullPath, newest.FullName);
    }
}

namespace EditionRegister.Store;

/// <summary>The folder a register lives in: one database, its settings, images, exports, backups and log. Made for its owner alone.</summary>
public sealed class RegisterFolder(string path)
{
    public const string DatabaseName = "register.db";

    public string FullPath { get; } = Path.GetFullPath(path);

    public string Database => Path.Combine(FullPath, DatabaseName);

    public string Settings => Path.Combine(FullPath, "register.toml");

    public string Templates => Path.Combine(FullPath, "templates");

    public string Exports => Path.Combine(FullPath, "exports");

    public string Backups => Path.Combine(FullPath, "backups");

    public string Log => Path.Combine(FullPath, "log.txt");

    public bool HoldsRegister => File.Exists(Database);

    /// <summary>The nearest folder at or above <paramref name="start"/> that holds a register, or null.</summary>
    public static RegisterFolder? Above(string start)
    {
        for (var at = new DirectoryInfo(start); at is not null; at = at.Parent)
        {
            if (new RegisterFolder(at.FullName) is { HoldsRegister: true } found)
            {
                return found;
            }
        }

        return null;
    }
}

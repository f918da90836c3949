namespace EditionRegister.Cli;

/// <summary>Finds the register's folder: --register, then EDREG_REGISTER, then the current folder and those above it.</summary>
internal static class RegisterFinder
{
    /// <summary>A folder that holds this file is a register.</summary>
    public const string FileName = "register.db";

    public const string Variable = "EDREG_REGISTER";

    /// <returns>A full path.</returns>
    /// <exception cref="Domain.RefusedException">register-not-found.</exception>
    public static string Find(string? option, AppServices services)
    {
        if (option is not null)
        {
            return Named(option, "--register", services);
        }

        if (services.Environment(Variable) is { Length: > 0 } variable)
        {
            return Named(variable, Variable, services);
        }

        return Upwards(services.CurrentDirectory) ?? throw RegisterRefusals.NotFoundUpwards(services.CurrentDirectory);
    }

    private static string Named(string folder, string by, AppServices services)
    {
        // An empty name would mean the current folder, which is what a script with an unset variable did not mean.
        var full = folder.Length == 0 ? throw RegisterRefusals.NoName(by) : Path.GetFullPath(folder, services.CurrentDirectory);

        return IsRegister(full) ? full : throw RegisterRefusals.NotFoundWhereNamed(full, by);
    }

    private static string? Upwards(string folder)
    {
        for (var here = new DirectoryInfo(folder); here is not null; here = here.Parent)
        {
            if (IsRegister(here.FullName))
            {
                return here.FullName;
            }
        }

        return null;
    }

    private static bool IsRegister(string folder) => File.Exists(Path.Combine(folder, FileName));
}

namespace EditionRegister.Tui.Asking;

/// <summary>A path as people type it: with ~ for their home, in quotes where a file was dropped onto the terminal, seen from where the program was started.</summary>
internal static class TypedPath
{
    /// <param name="typed">Not empty.</param>
    /// <param name="from">The folder a path that is not whole begins in; the current one unless said.</param>
    /// <returns>A full path.</returns>
    public static string Full(string typed, string? from = null)
    {
        var path = Unquoted(typed.Trim());

        if (path == "~" || path.StartsWith("~/", StringComparison.Ordinal) || path.StartsWith(@"~\", StringComparison.Ordinal))
        {
            path = Environment.GetFolderPath(Environment.SpecialFolder.UserProfile) + path[1..];
        }

        return Path.TrimEndingDirectorySeparator(Path.GetFullPath(path, from ?? Environment.CurrentDirectory));
    }

    /// <summary>What keeps a text from being a path at all, or null.</summary>
    public static string? Wrong(string typed) => typed.Contains('\0', StringComparison.Ordinal) || Unquoted(typed).Length == 0 ? "That is no path." : null;

    private static string Unquoted(string typed) => typed is ['\'' or '"', .., var last] && last == typed[0] ? typed[1..^1] : typed;
}

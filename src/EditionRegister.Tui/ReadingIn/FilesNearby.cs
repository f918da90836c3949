using EditionRegister.Domain.Text;
using EditionRegister.Tui.Asking;

namespace EditionRegister.Tui.ReadingIn;

/// <summary>Files of some kinds, and folders, that a path may go on with, as it is typed. Each folder is looked into once.</summary>
/// <param name="endings">In capitals, with their dot.</param>
internal sealed class FilesNearby(params IReadOnlyList<string> endings)
{
    private const int MostLookedAt = 2_000;
    private const int MostShown = 6;

    private readonly Dictionary<string, IReadOnlyList<string>> _folders = new(StringComparer.Ordinal);

    /// <summary>The path completed: files first, then folders, each with what was typed of the way to it.</summary>
    public IReadOnlyList<string> Of(string typed)
    {
        if (TypedPath.Wrong(typed) is not null && typed.Length > 0)
        {
            return [];
        }

        var cut = typed.LastIndexOf('/') + 1;
        var (way, begun) = (typed[..cut], SearchText.Fold(typed[cut..]));

        return [.. In(way.Length == 0 ? "." : way).Where(name => SearchText.Fold(name).StartsWith(begun, StringComparison.Ordinal)).Select(name => way + name).Where(path => path != typed).Take(MostShown)];
    }

    private IReadOnlyList<string> In(string way)
    {
        var folder = TypedPath.Full(way);

        if (!_folders.TryGetValue(folder, out var names))
        {
            _folders.Add(folder, names = Read(folder));
        }

        return names;
    }

    private IReadOnlyList<string> Read(string folder)
    {
        try
        {
            DirectoryInfo there = new(folder);
            var files = there.EnumerateFiles().Take(MostLookedAt).Where(file => endings.Contains(file.Extension.ToUpperInvariant())).Select(file => file.Name);
            var folders = there.EnumerateDirectories().Take(MostLookedAt).Where(one => !one.Name.StartsWith('.')).Select(one => one.Name + "/");

            return [.. files.Order(StringComparer.Ordinal), .. folders.Order(StringComparer.Ordinal)];
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            // Half a path names a folder that is not there; it is being typed.
            return [];
        }
    }
}

using System.Text.RegularExpressions;

namespace EditionRegister.UseCases.Tests.Refusals;

/// <summary>The names of all refusals the source can make, found by reading it.</summary>
internal static partial class RefusalNames
{
    public static IReadOnlySet<string> InSource { get; } = (
        from file in Directory.EnumerateFiles(Path.Combine(Approved.TestsFolder, "..", "src"), "*.cs", SearchOption.AllDirectories)
        where !file.Contains($"{Path.DirectorySeparatorChar}obj{Path.DirectorySeparatorChar}", StringComparison.Ordinal)
        let text = File.ReadAllText(file)
        where text.Contains("RefusedException", StringComparison.Ordinal)
        from Match made in Made().Matches(text)
        select NameOf(made, text)).ToHashSet(StringComparer.Ordinal);

    /// <summary>Written at the place, or as a constant of the file; a constant of another file would be no name at all, and so be found.</summary>
    private static string NameOf(Match made, string text) =>
        made.Groups["name"] is { Success: true } name ? name.Value
        : Regex.Match(text, $"""const string {made.Groups["constant"].Value} = "(?<name>[a-z0-9-]+)";""").Groups["name"].Value;

    [GeneratedRegex("""\bnew(?: RefusedException)?\(\s*(?:"(?<name>[a-z0-9]+(?:-[a-z0-9]+)+)"|(?<constant>[A-Z]\w+)),\s*(?:\$?"|string\.Create|FormattableString)""")]
    private static partial Regex Made();
}

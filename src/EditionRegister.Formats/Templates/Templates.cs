using System.Reflection;
using System.Text;
using EditionRegister.Domain;

namespace EditionRegister.Formats.Templates;

/// <summary>The shipped wording and layouts, of which a register's own <c>templates/</c> folder may override any.</summary>
public static class Templates
{
    private const string Root = "templates/";

    private static readonly Assembly Shipped = typeof(Templates).Assembly;

    /// <summary>The user's file where there is one, else the shipped one.</summary>
    /// <param name="relativeName">With forward slashes, such as <c>label-sheets/a4-3x8.toml</c>.</param>
    /// <param name="overrideFolder">The register's <c>templates/</c> folder, or null.</param>
    /// <exception cref="FileNotFoundException">Neither the user nor the program has such a template.</exception>
    public static Stream Open(string relativeName, string? overrideFolder)
    {
        var own = OwnFile(relativeName, overrideFolder);

        return own is not null
            ? File.OpenRead(own)
            : Shipped.GetManifestResourceStream(Root + relativeName)
                ?? throw new FileNotFoundException($"There is no template {relativeName}.", relativeName);
    }

    /// <summary>The text of a template, and the name by which a refusal should call it.</summary>
    internal static (string Text, string FileName) Read(string relativeName, string? overrideFolder)
    {
        var fileName = OwnFile(relativeName, overrideFolder) ?? Root + relativeName;
        using StreamReader reader = new(Open(relativeName, overrideFolder), new UTF8Encoding(false, throwOnInvalidBytes: true));

        try
        {
            return (reader.ReadToEnd(), fileName);
        }
        catch (DecoderFallbackException)
        {
            throw new RefusedException("template-not-utf-8", $"{fileName} was not read: it is not UTF-8 text. Save it again as UTF-8.");
        }
    }

    /// <summary>The names in one folder, shipped and the user's own, each once, in order.</summary>
    internal static IReadOnlyList<string> Names(string folder, string? overrideFolder)
    {
        var own = overrideFolder is null ? null : Path.Combine(overrideFolder, folder);
        var files = Directory.Exists(own) ? Directory.GetFiles(own, "*.toml").Select(Path.GetFileName) : [];
        var shipped = Shipped.GetManifestResourceNames()
            .Where(name => name.StartsWith(Root + folder + "/", StringComparison.Ordinal))
            .Select(Path.GetFileName);

        return [.. shipped.Concat(files).OfType<string>().Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal)];
    }

    private static string? OwnFile(string relativeName, string? overrideFolder)
    {
        if (relativeName.Split('/').Any(part => part is "" or "." or "..") || Path.IsPathRooted(relativeName))
        {
            throw new ArgumentException($"“{relativeName}” does not name a file inside the templates folder.", nameof(relativeName));
        }

        var path = overrideFolder is null ? null : Path.Combine(overrideFolder, relativeName);
        return File.Exists(path) ? path : null;
    }
}

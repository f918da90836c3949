using System.Globalization;
using EditionRegister.Domain;
using EditionRegister.Formats.Toml;

namespace EditionRegister.Formats.Settings;

/// <summary>Changes settings in a file that a person may have written in: what is not changed stays as it stands, comments too.</summary>
public static class RegisterTomlEdit
{
    /// <summary>The file's text with other settings in it; written anew where its lines cannot simply be changed.</summary>
    /// <exception cref="RefusedException">A value no such file may hold; told as reading the file would tell it.</exception>
    public static string Change(string text, RegisterSettings settings, string fileName)
    {
        ArgumentNullException.ThrowIfNull(text);
        var before = RegisterToml.Read(text, fileName);
        var anew = RegisterToml.Write(settings);
        var wanted = RegisterToml.Read(anew, fileName);

        var changed = Values(wanted).Zip(Values(before)).Where(pair => pair.First.Value != pair.Second.Value)
            .Aggregate((string?)text.ReplaceLineEndings("\n"), (lines, pair) => lines is null ? null : WithLine(lines, pair.First.Key, pair.First.Value));

        return changed is not null && Says(changed, wanted, fileName) ? changed : anew;
    }

    private static IEnumerable<(string Key, string? Value)> Values(RegisterSettings settings) =>
    [
        ("name", TomlString.Quote(settings.Name)),
        ("base_url", settings.BaseUrl is { } url ? TomlString.Quote(url) : null),
        ("page", TomlString.Quote(settings.Page.Word)),
        ("currency", TomlString.Quote(settings.Currency)),
        ("units", TomlString.Quote(settings.Units)),
        ("size_writing", TomlString.Quote(settings.SizeWriting.Word)),
        ("by", settings.By?.ToString(CultureInfo.InvariantCulture)),
        ("right_mm", settings.PrinterOffset.Right.ToString(CultureInfo.InvariantCulture)),
        ("down_mm", settings.PrinterOffset.Down.ToString(CultureInfo.InvariantCulture)),
    ];

    /// <summary>The line of a key changed, or its commented line made one; null where it has neither.</summary>
    private static string? WithLine(string text, string key, string? value)
    {
        var lines = text.Split('\n');
        var at = Array.FindIndex(lines, line => IsOf(line, key));

        if (at < 0)
        {
            at = Array.FindIndex(lines, line => line.StartsWith('#') && IsOf(line[1..].TrimStart(), key));
        }

        if (at < 0)
        {
            return value is null ? text : Added(lines, key, value);
        }

        lines[at] = value is null ? $"# {lines[at]}" : $"{key} = {value}";
        return string.Join('\n', lines);
    }

    /// <summary>A file older than a setting has no line for it: one is added behind the units, or above all, before any table.</summary>
    private static string? Added(string[] lines, string key, string value) => key.EndsWith("_mm", StringComparison.Ordinal) ? null
        : string.Join('\n', lines[..Behind(lines)].Append($"{key} = {value}").Concat(lines[Behind(lines)..]));

    private static int Behind(string[] lines) => Array.FindIndex(lines, line => IsOf(line, "units")) + 1;

    private static bool IsOf(string line, string key) => line.StartsWith(key, StringComparison.Ordinal) && line[key.Length..].TrimStart().StartsWith('=');

    /// <summary>A line may have stood inside a text of several, or had a comment behind it that was taken away.</summary>
    private static bool Says(string text, RegisterSettings wanted, string fileName)
    {
        try
        {
            return RegisterToml.Read(text, fileName) == wanted;
        }
        catch (RefusedException)
        {
            return false;
        }
    }
}

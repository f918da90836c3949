using System.Globalization;
using System.Text;

namespace EditionRegister.Formats.Toml;

/// <summary>Text as a TOML basic string on one line.</summary>
internal static class TomlString
{
    public static string Quote(string text)
    {
        // Escaped too: what some editors, and our TOML reader, take for the end of a line.
        StringBuilder quoted = new("\"");

        foreach (var c in text)
        {
            quoted.Append(c switch
            {
                '"' => "\\\"",
                '\\' => "\\\\",
                < ' ' or (>= '\u007F' and <= '\u009F') or '\u2028' or '\u2029' => "\\u" + ((int)c).ToString("X4", CultureInfo.InvariantCulture),
                _ => c.ToString(),
            });
        }

        return quoted.Append('"').ToString();
    }
}

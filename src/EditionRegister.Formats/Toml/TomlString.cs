using System.Globalization;
using System.Text;

namespace EditionRegister.Formats.Toml;

/// <summary>Text as a TOML basic string on one line.</summary>
internal static class TomlString
{
    public static string Quote(string text)
    {
        StringBuilder quoted = new("\"");

        foreach (var c in text)
        {
            quoted.Append(c switch
            {
                '"' => "\\\"",
                '\\' => "\\\\",
                < ' ' or '\u007F' => "\\u" + ((int)c).ToString("X4", CultureInfo.InvariantCulture),
                _ => c.ToString(),
            });
        }

        return quoted.Append('"').ToString();
    }
}

using EditionRegister.Domain.Codes;

namespace EditionRegister.Domain.Stock;

/// <summary>One code as a person typed it or a scanner read it: bare, or as the link of a QR code.</summary>
/// <param name="Text">As it came, without blanks around it.</param>
/// <param name="Code">The code, or null where it is none.</param>
public sealed record ScannedCode(string Text, RegisterCode? Code)
{
    /// <summary>Why it is no code, to follow what was read; null where it is one.</summary>
    public string? Problem =>
        Code is not null ? null
        : RegisterCode.HasItsForm(Bare(Text)) ? "its check character fails, so one of the others was misread"
        : $"it has not the form of a code, {RegisterCode.Form}";

    public static ScannedCode Read(string scanned)
    {
        ArgumentNullException.ThrowIfNull(scanned);

        // Some scanners send a byte order mark or a NUL before the first code.
        var text = scanned.Trim().Trim('\uFEFF', '\0').Trim();

        return new ScannedCode(text, RegisterCode.TryParse(Bare(text), out var code) ? code : null);
    }

    /// <summary>What stands after the last slash of a link; anything else is left as it is.</summary>
    private static string Bare(string text)
    {
        if (!text.StartsWith("https://", StringComparison.OrdinalIgnoreCase) && !text.StartsWith("http://", StringComparison.OrdinalIgnoreCase))
        {
            return text;
        }

        var address = text.Split('?', '#')[0].TrimEnd('/');

        return address[(address.LastIndexOf('/') + 1)..];
    }
}

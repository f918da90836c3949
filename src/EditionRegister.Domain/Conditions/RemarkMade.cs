using System.Globalization;
using System.Text.RegularExpressions;

namespace EditionRegister.Domain.Conditions;

/// <summary>One thing seen on a sheet, as it is written down: what, where on the sheet, more about it, and the number of a picture of it.</summary>
public sealed partial record RemarkMade(string Term, string? Position, string? Note, long? Picture)
{
    /// <summary>The form in which a person writes one.</summary>
    public const string Form = "TERM@WHERE ON THE SHEET: note";

    /// <summary>dented-corner@lower left: 3 mm, soft #4</summary>
    /// <exception cref="RefusedException">remark-misread.</exception>
    public static RemarkMade Read(string text)
    {
        ArgumentNullException.ThrowIfNull(text);

        var picture = AtTheEnd().Match(text);
        var said = picture.Success ? text[..picture.Index] : text;
        var (before, note) = Parted(said, ':');
        var (term, position) = Parted(before, '@');
        long? number = picture.Success && long.TryParse(picture.Groups[1].Value, NumberStyles.None, CultureInfo.InvariantCulture, out var read) ? read : null;

        return term is null || (picture.Success && number is null)
            ? throw ConditionRefusals.RemarkMisread(text)
            : new RemarkMade(term.ToLowerInvariant().Replace(' ', '-'), position, note, number);
    }

    /// <summary>As a person would write it again.</summary>
    public override string ToString() =>
        $"{Term}{(Position is null ? "" : $"@{Position}")}{(Note is null ? "" : $": {Note}")}{(Picture is { } picture ? string.Create(CultureInfo.InvariantCulture, $" #{picture}") : "")}";

    private static (string? Before, string? After) Parted(string? text, char at)
    {
        var place = text?.IndexOf(at, StringComparison.Ordinal) ?? -1;

        return place < 0 ? (Bare(text), null) : (Bare(text![..place]), Bare(text[(place + 1)..]));
    }

    private static string? Bare(string? text) => string.IsNullOrWhiteSpace(text) ? null : text.Trim();

    [GeneratedRegex(@"\s#([0-9]+)\s*\z")]
    private static partial Regex AtTheEnd();
}

using System.Globalization;
using EditionRegister.Domain;
using EditionRegister.Domain.People;

namespace EditionRegister.UseCases.Wording;

/// <summary>A register's settings as facts, in the words of commands and screens.</summary>
public static class SettingsShown
{
    public static IReadOnlyList<(string Label, string Value)> Facts(RegisterSettings settings, AddressBook book) =>
    [
        ("Called", settings.Name),
        ("Written by", settings.By is { } by ? $"{book.NameOf(by)}, person {Counted.Figure(by)}" : "nobody named"),
        ("Currency", settings.Currency),
        ("Sizes on documents in", settings.Units),
        ("Sizes are written", $"{settings.SizeWriting.Word} ({settings.SizeWriting.Description})"),
        ("Paper for documents", settings.Page.Word),
        ("Address for QR links", settings.BaseUrl ?? "none, so no QR codes are printed"),
        ("Label printer", Offset(settings)),
    ];

    /// <summary>What is said once they are changed: every setting that is another now.</summary>
    public static string Changed(RegisterSettings before, RegisterSettings after, AddressBook book)
    {
        var changed = Facts(before, book).Zip(Facts(after, book)).Where(pair => pair.First != pair.Second).Select(pair => $"{char.ToLowerInvariant(pair.Second.Label[0])}{pair.Second.Label[1..]}: {pair.Second.Value}").ToList();

        return changed.Count == 0 ? "The settings are as they were." : $"Settings changed; {string.Join("; ", changed)}.";
    }

    private static string Offset(RegisterSettings settings) => settings.PrinterOffset is { Right: 0, Down: 0 }
        ? "prints where it should"
        : string.Create(CultureInfo.InvariantCulture, $"labels moved {settings.PrinterOffset.Right} mm to the right and {settings.PrinterOffset.Down} mm down");
}

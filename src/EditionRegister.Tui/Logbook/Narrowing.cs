using System.Globalization;
using EditionRegister.Domain.Dates;
using EditionRegister.UseCases.Looking;

namespace EditionRegister.Tui.Logbook;

/// <summary>Which entries are looked at, beside the words typed into the filter; nothing named is all.</summary>
internal sealed record Narrowing
{
    public static Narrowing None { get; } = new();

    public RecordedDate From { get; init; } = RecordedDate.None;

    public RecordedDate To { get; init; } = RecordedDate.None;

    public long? By { get; init; }

    public string? ByName { get; init; }

    /// <summary>Words that are found in what the entry is on.</summary>
    public string? About { get; init; }

    /// <summary>The one thing: "work/17"; and how it is called.</summary>
    public string? Root { get; init; }

    public string? RootCalled { get; init; }

    public LogbookWanted Wanted(string typed) => new()
    {
        From = From.Earliest,
        To = To.Latest,
        By = By,
        Root = Root,
        Text = string.IsNullOrWhiteSpace($"{About} {typed}") ? null : $"{About} {typed}".Trim(),
    };

    /// <summary>from 2026-03 to 2026-05, by Mira Tolland, about harbour.</summary>
    public string InWords()
    {
        string?[] days = [From.IsKnown ? $"from {From}" : null, To.IsKnown ? $"to {To}" : null];
        string?[] parts =
        [
            From.IsKnown || To.IsKnown ? string.Join(' ', days.OfType<string>()) : null,
            By is { } by ? $"by {ByName ?? by.ToString(CultureInfo.InvariantCulture)}" : null,
            RootCalled is null ? null : $"about {RootCalled}",
            About is null ? null : $"about “{About}”",
        ];

        return string.Join(", ", parts.OfType<string>());
    }
}

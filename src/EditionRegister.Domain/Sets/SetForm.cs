namespace EditionRegister.Domain.Sets;

/// <summary>What holds the prints of a set together. Common practice, no source.</summary>
/// <param name="Word">Its permanent word.</param>
/// <param name="Name">As sentences have it.</param>
public sealed record SetForm(string Word, string Name)
{
    public static IReadOnlyList<SetForm> All { get; } =
    [
        new("portfolio", "portfolio"), new("suite", "suite"), new("folded-book", "folded book"), new("bound-book", "bound book"), new("exchange", "print exchange"),
    ];

    public static IReadOnlyList<string> Words { get; } = [.. All.Select(form => form.Word)];

    /// <summary>Where the signature stands: on the colophon sheet of each copy, on every sheet, on both.</summary>
    public static IReadOnlyList<string> SignedOn { get; } = ["colophon", "sheets", "both", "unknown"];

    /// <summary>A word the register does not know is said as it is.</summary>
    public static string NameOf(string word) => All.FirstOrDefault(form => form.Word == word)?.Name ?? word;
}

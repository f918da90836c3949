using EditionRegister.Domain.Codes;
using EditionRegister.Domain.Text;

namespace EditionRegister.Store.Lists;

/// <summary>What someone typed into a search field: a whole code, or words each of which must be found somewhere.</summary>
internal sealed class SearchWords
{
    /// <summary>The sign before a per cent sign or underscore that stands for itself.</summary>
    public const string Escape = "\\";

    private SearchWords(string? code, IReadOnlyList<SearchWord> words) => (Code, Words) = (code, words);

    /// <summary>The eight characters, when exactly a code was typed.</summary>
    public string? Code { get; }

    public IReadOnlyList<SearchWord> Words { get; }

    public static SearchWords Of(string? text, IReadOnlyList<string> phrases) =>
        phrases.Count == 0 && RegisterCode.TryParse(text, out var code) ? new SearchWords(code.Text, [])
        : phrases is [var phrase] && string.IsNullOrWhiteSpace(text) && RegisterCode.TryParse(phrase, out code) ? new SearchWords(code.Text, [])
        : new SearchWords(null, [.. (text ?? "").Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries).Concat(phrases).Select(SearchWord.Of)]);
}

/// <summary>One word as patterns for LIKE: folded and anywhere in a text, or a part of a code; and whether it is one that lists put where nothing is known.</summary>
internal sealed record SearchWord(string Anywhere, string InCode, bool IsUntitled, bool IsUnknown)
{
    public static SearchWord Of(string word) => new(
        "%" + Escaped(SearchText.Fold(word)) + "%",
        "%" + Escaped(word.Replace("-", "", StringComparison.Ordinal).ToUpperInvariant()) + "%",
        Folds("Untitled", word),
        Folds("[unknown]", word));

    private static bool Folds(string shown, string word) => SearchText.Fold(shown).Contains(SearchText.Fold(word), StringComparison.Ordinal);

    private static string Escaped(string text) => text
        .Replace(SearchWords.Escape, SearchWords.Escape + SearchWords.Escape, StringComparison.Ordinal)
        .Replace("%", SearchWords.Escape + "%", StringComparison.Ordinal)
        .Replace("_", SearchWords.Escape + "_", StringComparison.Ordinal);
}

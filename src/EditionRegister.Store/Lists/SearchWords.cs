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

    public static SearchWords Of(string? text) => RegisterCode.TryParse(text, out var code)
        ? new SearchWords(code.Text, [])
        : new SearchWords(null, [.. (text ?? "").Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries).Select(SearchWord.Of)]);
}

/// <summary>One word as patterns for LIKE: folded and anywhere in a text, or as the beginning of a code.</summary>
internal sealed record SearchWord(string Anywhere, string CodeStart)
{
    public static SearchWord Of(string word) => new(
        "%" + Escaped(SearchText.Fold(word)) + "%",
        Escaped(word.Replace("-", "", StringComparison.Ordinal).ToUpperInvariant()) + "%");

    private static string Escaped(string text) => text
        .Replace(SearchWords.Escape, SearchWords.Escape + SearchWords.Escape, StringComparison.Ordinal)
        .Replace("%", SearchWords.Escape + "%", StringComparison.Ordinal)
        .Replace("_", SearchWords.Escape + "_", StringComparison.Ordinal);
}

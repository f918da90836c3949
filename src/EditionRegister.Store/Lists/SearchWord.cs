using EditionRegister.Domain.Text;

namespace EditionRegister.Store.Lists;

/// <summary>One word, or some words as they stand, as patterns for LIKE: folded and anywhere in a text, or a part of a code; and whether it is one that lists put where nothing is known.</summary>
internal sealed record SearchWord(string Folded, string Anywhere, string InCode, bool IsUntitled, bool IsUnknown)
{
    /// <summary>The sign before a per cent sign or underscore that stands for itself.</summary>
    public const string Escape = "\\";

    public static SearchWord Of(string word) => new(
        SearchText.Fold(word),
        "%" + Escaped(SearchText.Fold(word)) + "%",
        "%" + Escaped(word.Replace("-", "", StringComparison.Ordinal).ToUpperInvariant()) + "%",
        Folds("Untitled", word),
        Folds("[unknown]", word));

    private static bool Folds(string shown, string word) => SearchText.Fold(shown).Contains(SearchText.Fold(word), StringComparison.Ordinal);

    private static string Escaped(string text) => text
        .Replace(Escape, Escape + Escape, StringComparison.Ordinal)
        .Replace("%", Escape + "%", StringComparison.Ordinal)
        .Replace("_", Escape + "_", StringComparison.Ordinal);
}

using EditionRegister.Domain.Reading.Techniques;

namespace EditionRegister.Domain.Reading.Search;

/// <summary>Techniques in the words of a search: etching, Radierung, etching and aquatint.</summary>
internal static class TechniquesRead
{
    // Every sheet is a print: nothing is asked by that.
    private const string Anything = "print";

    /// <summary>None where anything but techniques stands there.</summary>
    public static IReadOnlyList<Technique> Of(IReadOnlyList<string> words) =>
        words.All(word => word.All(IsOfTechnique)) && !EveryWord.Joins(words[0]) && !EveryWord.Joins(words[^1])
        && TechniqueReader.Read(string.Join(' ', words)) is { Left: [], Support: null, Colours: null, Techniques: var techniques } && techniques.All(technique => technique.Word != Anything)
            ? [.. techniques]
            : [];

    /// <summary>Whether there may be one among these words at all: asked once before every run of them is read.</summary>
    public static bool MayBeIn(string text) => TechniqueReader.Read(text).Techniques.Count > 0;

    private static bool IsOfTechnique(char c) => char.IsLetter(c) || c is '-' or ',' or ';' or '&' or '+' or '/' or '\'' or '’';
}

using EditionRegister.Domain.Reading.Techniques;

namespace EditionRegister.Domain.Reading.Search;

/// <summary>Techniques in the words of a search: etching, Radierung, etching and aquatint.</summary>
internal static class TechniquesRead
{
    // Every sheet is a print: nothing is asked by that.
    private const string Anything = "print";

    /// <summary>None where anything but techniques stands there.</summary>
    public static IReadOnlyList<Technique> Of(IReadOnlyList<string> words)
    {
        var techniques = words.All(word => word.All(IsOfTechnique)) ? Whole(words) : [];

        return Counts(words[0], words.Skip(1), techniques) && Counts(words[^1], words.SkipLast(1), techniques) ? techniques : [];
    }

    /// <summary>Whether there may be one among these words at all: asked once before every run of them is read.</summary>
    public static bool MayBeIn(string text) => TechniqueReader.Read(text).Techniques.Count > 0;

    private static bool IsOfTechnique(char c) => char.IsLetter(c) || c is '-' or ',' or ';' or '&' or '+' or '/' or '\'' or '’';

    private static IReadOnlyList<Technique> Whole(IEnumerable<string> words) =>
        TechniqueReader.Read(string.Join(' ', words)) is { Left: [], Support: null, Colours: null, Techniques: var techniques } && techniques.All(technique => technique.Word != Anything)
            ? [.. techniques]
            : [];

    /// <summary>A word at the end is a technique itself, or changes what the others are.</summary>
    private static bool Counts(string word, IEnumerable<string> others, IReadOnlyList<Technique> techniques) =>
        MayBeIn(word) || !Whole(others).SequenceEqual(techniques);
}

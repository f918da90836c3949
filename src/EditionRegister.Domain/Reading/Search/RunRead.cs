using EditionRegister.Domain.Numbers;
using EditionRegister.Domain.Works;

namespace EditionRegister.Domain.Reading.Search;

/// <summary>Reads runs of words as all that they can mean: 10/1917 is a month, and a number of an edition. Knows from the whole text what need not be tried.</summary>
internal sealed class RunRead(string text, OwnWords own)
{
    private readonly bool _mayHaveNumbers = NumberRead.MayBeIn(text, own);
    private readonly bool _mayHaveDates = DatesRead.MayBeIn(text);
    private readonly bool _mayHaveTechniques = TechniquesRead.MayBeIn(text);

    /// <summary>Null where they are words and nothing more.</summary>
    public SoughtPart? Of(IReadOnlyList<string> words)
    {
        var written = string.Join(' ', words);
        var dates = _mayHaveDates ? DatesRead.Of(words) : null;
        var number = _mayHaveNumbers ? NumberRead.Of(words, own) : null;
        number = dates is not null && LooksLikeYears(number) ? null : number;

        SoughtPart part = new(written, number is null || IsSmallMark(words[0]) ? words : [written])
        {
            Number = number,
            Dates = dates,
            Techniques = _mayHaveTechniques ? TechniquesRead.Of(words) : [],
        };

        return part.IsRead ? part : null;
    }

    // 2024/2025: the same years that no pencil is read as a number.
    private static bool LooksLikeYears(SoughtNumber? number) => number is { Number: >= 1400 and < 2100 } && number.Kind == NumberingKind.Numbered;

    // A mark and a figure would be found nearly everywhere by themselves, and so are looked for as they stand; but "bat 2" may be words of a title.
    private static bool IsSmallMark(string word) => word.Length <= 3 && word.All(char.IsAsciiLetterLower);
}

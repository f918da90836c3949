using EditionRegister.Domain.Reading.Inscriptions.Copies;
using EditionRegister.Domain.Reading.Text;

namespace EditionRegister.Domain.Reading.Inscriptions.Editions;

/// <summary>Set #116, copy no. 5, copy C, Exemplar 3, No. 11 of an estimated 15, #18 of a recorded edition of 24.</summary>
internal static class CopyNumbers
{
    private const int MostAdjectives = 4;

    public static SizeMet? At(TokenText text, int at)
    {
        if (Number(text, at, out var isNamed) is not { } copy)
        {
            return Lettered(text, at);
        }

        if (text.IsSign(copy.Next, '/') || (text.IsSign(copy.Next, '-') && text.IsDigits(copy.Next + 1)))
        {
            return null;
        }

        return (isNamed || Announcements.BeginsALine(text, at) ? OfSome(text, at, copy) : null) ?? OfEdition(text, at, copy) ?? (isNamed ? new SizeMet(at, copy.Next) { Number = copy.Value } : null);
    }

    /// <summary>#5, no. 5, Nr. 5, n° 5.</summary>
    public static Numeral? AfterNumberSign(TokenText text, int at) =>
        text.IsAnySign(at, "#№") ? Numerals.Arabic(text, at + 1)
        : EditionWords.IsNumberWord(text.Word(at)) || (text.IsWord(at, "n") && text.IsAnySign(at + 1, ".°")) ? Numerals.Arabic(text, text.IsAnySign(at + 1, ".°") ? at + 2 : at + 1)
        : null;

    private static Numeral? Number(TokenText text, int at, out bool isNamed)
    {
        var word = text.Word(at);
        isNamed = CountWords.IsCopy(word);

        // A bare figure behind "print" may be anything; behind "copy" it is the copy's.
        return !isNamed ? AfterNumberSign(text, at)
            : AfterNumberSign(text, at + 1) ?? (CountWords.IsNumberedCopy(word) && word is not ("set" or "portfolio") && Numerals.Arabic(text, at + 1) is { } bare && !DateParts.IsYear(bare.Value) ? bare : null);
    }

    /// <summary>Copy C and Exemplar H; I, V and X begin a roman count and C alone is a letter.</summary>
    private static SizeMet? Lettered(TokenText text, int at) =>
        text.Word(at) is "copy" or "exemplaire" or "exemplar" or "esemplare" or "ejemplar"
        && text.Written(at + 1) is [>= 'A' and <= 'Z' and not ('I' or 'V' or 'X')]
        && !text.IsAnySign(at + 2, "./'") && (at + 2 == text.Count || !text.IsWord(at + 2) || text.IsWord(at + 2, "of"))
            ? new SizeMet(at, at + 2) { Letter = text.Written(at + 1).ToString() }
            : null;

    /// <summary>No. 11 of an estimated 15.</summary>
    private static SizeMet? OfSome(TokenText text, int at, Numeral copy) =>
        text.Word(copy.Next) is "of" or "von" or "sur" or "di" or "de" && SizeFigures.At(text, copy.Next + 1, words: true) is { IsUnknown: false, IsRoman: false } size && !(size.Of < copy.Value)
            ? SizeMet.Sized(at, size) with { Number = copy.Value }
            : null;

    /// <summary>#18 of a recorded edition of 24; No. 26, ed. 50.</summary>
    private static SizeMet? OfEdition(TokenText text, int at, Numeral copy)
    {
        var next = text.IsAnySign(copy.Next, ",;") || text.Word(copy.Next) is "of" or "from" or "in" or "aus" ? copy.Next + 1 : copy.Next;

        for (var skipped = 0; skipped < MostAdjectives && text.Word(next) is "a" or "an" or "the" or "recorded" or "limited" or "planned" or "numbered" or "einer" or "der"; skipped++)
        {
            next++;
        }

        return EditionSizes.At(text, next) is { Of: { } of } edition && of >= copy.Value ? edition with { Start = at, Number = copy.Value } : null;
    }
}

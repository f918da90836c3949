using EditionRegister.Domain.Reading.Text;

namespace EditionRegister.Domain.Reading.Inscriptions.Editions;

/// <summary>First cast in an edition of 12, the first of an estimated 6 casts, 11th of an estimated 12, N of edition of 16.</summary>
internal static class PlacesInEditions
{
    public static SizeMet? At(TokenText text, int at) => Letter(text, at) ?? Place(text, at);

    private static SizeMet? Letter(TokenText text, int at) =>
        text.Written(at) is [>= 'A' and <= 'Z'] && text.IsWord(at + 1, "of") && Edition(text, at + 2) is { Of: { } of, Number: null } edition
            ? new SizeMet(at, edition.Next) { Letter = text.Written(at).ToString(), Of = of, IsRoman = edition.IsRoman, Hedge = edition.Hedge }
            : null;

    private static SizeMet? Place(TokenText text, int at)
    {
        if ((text.IsDigits(at) ? Ordinals.WithEnding(text, at) : NumberWords.Ordinal(text, at)) is not { } ordinal)
        {
            return null;
        }

        var next = text.Word(ordinal.Next) is "cast" or "casting" or "print" or "impression" or "copy" ? ordinal.Next + 1 : Hedges.Behind(text, ordinal.Next).Next;

        if (text.Word(next) is not ("in" or "of" or "from"))
        {
            return null;
        }

        if (Edition(text, next + 1) is { Number: null } edition && !(edition.Of < ordinal.Value))
        {
            return edition with { Start = at, Number = ordinal.Value };
        }

        return SizeFigures.At(text, next + 1, words: true) is { IsUnknown: false } size && !(size.Of < ordinal.Value) && CountWords.At(text, size.Next) is { } end
            ? SizeMet.Sized(at, size) with { Number = ordinal.Value, Next = end }
            : null;
    }

    private static SizeMet? Edition(TokenText text, int at)
    {
        at = text.Word(at) is "a" or "an" or "the" ? at + 1 : at;
        at = text.Word(at) is "planned" or "limited" or "projected" ? at + 1 : at;

        return EditionSizes.At(text, at);
    }
}

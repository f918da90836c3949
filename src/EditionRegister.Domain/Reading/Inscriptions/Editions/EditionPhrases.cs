using EditionRegister.Domain.Reading.Text;

namespace EditionRegister.Domain.Reading.Inscriptions.Editions;

/// <summary>Finds what is said of an edition in words.</summary>
internal static class EditionPhrases
{
    public static SizeMet? At(TokenText text, int at) =>
        text.IsWord(at) ? Unnumbered.At(text, at) ?? EditionSizes.At(text, at) ?? CopyNumbers.At(text, at) ?? PlacesInEditions.At(text, at) ?? EditionSizes.Alone(text, at) ?? CountedImpressions.At(text, at)
        : text.IsDigits(at) ? PlacesInEditions.At(text, at) ?? CountedImpressions.At(text, at)
        : text.IsSign(at, '#') ? CopyNumbers.At(text, at)
        : null;
}

using EditionRegister.Domain.Reading.Text;

namespace EditionRegister.Domain.Reading.Inscriptions.Editions;

/// <summary>Finds what is said of an edition in words.</summary>
internal static class EditionPhrases
{
    /// <param name="text">The text.</param>
    /// <param name="at">The token it should begin at.</param>
    /// <param name="isNumber">A number begins there, in figures, letters or words.</param>
    public static SizeMet? At(TokenText text, int at, bool isNumber) =>
        isNumber
            ? (text.IsWord(at) ? CopyNumbers.At(text, at) : null) ?? PlacesInEditions.At(text, at) ?? CountedImpressions.At(text, at)
            : Unnumbered.At(text, at) ?? EditionSizes.At(text, at) ?? CopyNumbers.At(text, at);
}

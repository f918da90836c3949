namespace EditionRegister.Domain.Reading.Inscriptions.Editions;

/// <summary>The words for an edition and for a number, in five languages.</summary>
internal static class EditionWords
{
    public static bool IsOne(ReadOnlySpan<char> word) => (Vocabulary.Of(word) & Opening.Edition) != 0;

    public static bool IsNumberWord(ReadOnlySpan<char> word) => (Vocabulary.Of(word) & Opening.NumberWord) != 0;

    /// <summary>What may stand between the word for an edition and its size.</summary>
    public static bool IsBetween(ReadOnlySpan<char> word) =>
        word is "of" or "d" or "number" or "no" or "nr" or "num" or "numero" or "de" or "di" or "da" or "von" or "a" or "size" or "is" or "limited" or "to" or "the" or "zu" or "in" or "en" or "was" or "were" or "limite" or "limitee" or "limitata" or "limitada" or "limitiert" or "limitierte" or "auf" or "total" or "totale" or "only" or "nur" or "seulement" or "soli";
}

using EditionRegister.Domain.Reading.Text;

namespace EditionRegister.Domain.Reading.Inscriptions;

/// <summary>Reads which one is meant: 2nd, 2e, 2., second, deuxième, zweiter, twenty-ninth, II.</summary>
internal static class Ordinals
{
    public static Numeral? Read(TokenText text, int at)
    {
        if (text.IsDigits(at))
        {
            return WithEnding(text, at) ?? (text.Figure(at) is > 0 and { } bare ? new Numeral(NumeralKind.Arabic, bare, at + 1) : null);
        }

        return NumberWords.Ordinal(text, at) ?? (Numerals.Roman(text, at) is { } roman ? Ended(text, roman) : null);
    }

    /// <summary>2nd, 11th, 1er, 2., 3°: digits that say themselves that they are an ordinal.</summary>
    public static Numeral? WithEnding(TokenText text, int at) =>
        text.Figure(at) is > 0 and { } figure && (IsEnding(text.Word(at + 1)) || (text.IsAnySign(at + 1, ".°") && !text.IsApart(at + 1)))
            ? new Numeral(NumeralKind.Arabic, figure, at + 2)
            : null;

    private static Numeral Ended(TokenText text, Numeral roman) =>
        text.Word(roman.Next) is "e" or "er" or "eme" or "ieme" || (text.IsAnySign(roman.Next, ".°") && !text.IsApart(roman.Next)) ? roman with { Next = roman.Next + 1 } : roman;

    private static bool IsEnding(ReadOnlySpan<char> word) =>
        word is "st" or "nd" or "rd" or "th" or "d" or "e" or "er" or "ere" or "eme" or "ieme" or "re" or "o" or "a" or "te" or "ter" or "º" or "ª";
}

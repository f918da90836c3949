using EditionRegister.Domain.Reading.Inscriptions;
using EditionRegister.Domain.Reading.Text;

namespace EditionRegister.Domain.Reading.Techniques;

/// <summary>Counts in digits or words: 4, four, twenty-four, vier, quatre. Above nought.</summary>
internal static class Counts
{
    public static (int Value, int Next)? At(TokenText text, int at)
    {
        // Two-colour and three-plate are counts here.
        if ((Numerals.Cardinal(text, at) ?? NumberWords.Joined(text, at)) is not { Value: > 0 } count)
        {
            return null;
        }

        var unit = text.IsSign(count.Next, '-') ? count.Next + 1 : count.Next;

        return count is { Kind: NumeralKind.Word, Value: >= 20 and < 100 } && count.Value % 10 == 0 && Numerals.Cardinal(text, unit) is { Kind: NumeralKind.Word, Value: > 0 and < 10 } units
            ? (count.Value + units.Value, units.Next)
            : (count.Value, count.Next);
    }
}

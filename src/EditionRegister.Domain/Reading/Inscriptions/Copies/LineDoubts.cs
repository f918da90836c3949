using EditionRegister.Domain.Reading.Text;

namespace EditionRegister.Domain.Reading.Inscriptions.Copies;

/// <summary>A slash with room around it may be a fraction's, or stand for the end of a line: 50/ 50 and 3 / 11 within other lines.</summary>
internal static class LineDoubts
{
    public static bool IsOne(TokenText text, Fraction fraction, Before before)
    {
        if (fraction.Size.Hedge != SizeHedge.None || fraction.Number.IsUnknown || fraction.Parting is not (Parting.Spaced or Parting.LineBreak))
        {
            return false;
        }

        // One figure on two lines, and nothing that says which it is.
        var isRepeated = fraction.Number.Value == fraction.Size.Of && (fraction.Next < text.Count || text.IsSign(fraction.Start - 1, '#'));

        return isRepeated || (before == Before.Anything && (IsChained(text, fraction) || (fraction.Parting == Parting.LineBreak && !fraction.IsRoman && IsOdd(text, fraction))));
    }

    private static bool IsChained(TokenText text, Fraction fraction) =>
        text.IsSign(fraction.Start - 1, '/') || text.Written(fraction.Start - 1) is [>= 'A' and <= 'Z' and not ('I' or 'V' or 'X')];

    /// <summary>In the midst of lines, or with a size that nobody would choose.</summary>
    private static bool IsOdd(TokenText text, Fraction fraction)
    {
        var begins = fraction.Start == 0 || (fraction.Start == 1 && text.IsSign(0, '"'));

        return !begins || fraction.Size.Of is not { } of || (of > 100 && of % 5 != 0) || (DateParts.IsYear(of) && fraction.Next < text.Count);
    }
}

using EditionRegister.Domain.Reading.Inscriptions.Editions;
using EditionRegister.Domain.Reading.Text;

namespace EditionRegister.Domain.Reading.Inscriptions.Copies;

/// <summary>What may be a copy's number and may be something else, so that nobody should guess.</summary>
internal static class CopyDoubts
{
    private const int LargestRoman = 200;

    public static bool IsOne(TokenText text, Fraction fraction, Before before, Surroundings around)
    {
        // Nobody numbers two hundred sheets in roman; MCMXL/MCMXLI is a span of years.
        if (fraction.Size.IsChoice || (fraction.Size.IsRoman && fraction.Size.Of > LargestRoman) || IsUnclear(text, fraction, before))
        {
            return true;
        }

        if (fraction.Parting == Parting.InWords)
        {
            return before == Before.Anything && IsOneOfSome(text, fraction);
        }

        if (before == Before.Mark)
        {
            return false;
        }

        return LineDoubts.IsOne(text, fraction, before)
            || (fraction.IsPlain && (FileDoubts.IsOne(text, fraction, before) || (before == Before.Anything && (DateDoubts.IsOne(text, fraction, around) || MeasureDoubts.IsOne(text, fraction, around)))));
    }

    /// <summary>18/? as it stands in an edition's field, but not with more around it.</summary>
    private static bool IsUnclear(TokenText text, Fraction fraction, Before before) =>
        fraction.Size.IsUnknown && (fraction.Parting != Parting.Tight || (before == Before.Anything && (fraction.Start > 0 || fraction.Next < text.Count)));

    /// <summary>1 of 3 may be one of a set; 35 of 75 alone, and one of an estimated nine casts, are copies.</summary>
    private static bool IsOneOfSome(TokenText text, Fraction fraction)
    {
        var isCounted = CountWords.At(text, fraction.Next) is { } end && !text.IsWord(end, "in");
        var isAlone = fraction.Start == 0 && fraction.Next == text.Count;

        return !(fraction.Size.Hedge != SizeHedge.None || (isCounted && CountWords.IsEstimated(text, fraction.Next)) || (isAlone && fraction.Size.Of > 20));
    }
}

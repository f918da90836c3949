using EditionRegister.Domain.Reading.Text;

namespace EditionRegister.Domain.Reading.Inscriptions;

/// <summary>Reads sizes with everything that hedges them: 75, at least 49, c. 20, 100?, 125-130, between 75 and 100, 100 or less, unlimited.</summary>
internal static class SizeFigures
{
    /// <param name="text">The text.</param>
    /// <param name="at">Where the hedge or the figure begins.</param>
    /// <param name="words">Number words count as well.</param>
    public static SizeFigure? At(TokenText text, int at, bool words)
    {
        if (Between(text, at) is { } between)
        {
            return between;
        }

        var hedge = Hedges.Before(text, at);

        if (Figure(text, hedge.Next, words) is not { } figure)
        {
            return null;
        }

        return figure.IsUnknown ? new SizeFigure(figure.Next) { IsUnknown = true } : Hedged(text, hedge, figure);
    }

    private static Numeral? Figure(TokenText text, int at, bool words) =>
        Numerals.Either(text, at) ?? (words ? NumberWords.Cardinal(text, at) : null);

    private static SizeFigure? Hedged(TokenText text, HedgeMet hedge, Numeral figure)
    {
        if (Range(text, figure, hedge) is { } range)
        {
            return range;
        }

        var word = text.Word(figure.Next);

        if (word is "or" or "ou" or "oder" or "o")
        {
            return Or(text, figure);
        }

        var (doubted, next) = Hedges.Behind(text, figure.Next);

        return hedge.Hedge == SizeHedge.AtMost ? AtMost(hedge.IsExclusive ? figure.Value - 1 : figure.Value, figure.Next)
            : new SizeFigure(next) { Of = figure.Value, IsRoman = figure.IsRoman, Hedge = hedge.Hedge != SizeHedge.None ? hedge.Hedge : doubted ? SizeHedge.About : SizeHedge.None };
    }

    /// <summary>Between 75 and 100, entre 75 et 100, zwischen 75 und 100.</summary>
    private static SizeFigure? Between(TokenText text, int at) =>
        text.Word(at) is "between" or "entre" or "zwischen" or "tra" && Numerals.Arabic(text, at + 1) is { } least && text.Word(least.Next) is "and" or "et" or "und" or "e" or "y" && Numerals.Arabic(text, least.Next + 1) is { } most
            ? Bounded(least, most)
            : null;

    /// <summary>125-130, tightly written.</summary>
    private static SizeFigure? Range(TokenText text, Numeral least, HedgeMet hedge) =>
        hedge.Hedge != SizeHedge.AtMost && least.Kind == NumeralKind.Arabic && text.IsSign(least.Next, '-') && !text.IsApart(least.Next) && !text.IsApart(least.Next + 1) && Numerals.Arabic(text, least.Next + 1) is { } most && Bounded(least, most) is { } range ? range with { IsRange = true } : null;

    private static SizeFigure? Bounded(Numeral least, Numeral most) =>
        most.Value > least.Value ? new SizeFigure(most.Next) { Hedge = SizeHedge.About, Bounds = new SizeBounds(least.Value, most.Value) } : null;

    /// <summary>100 or less, 100 or more, 100 or 135.</summary>
    private static SizeFigure? Or(TokenText text, Numeral figure) =>
        text.Word(figure.Next + 1) is "less" or "fewer" or "moins" or "weniger" or "meno" or "menos" ? AtMost(figure.Value, figure.Next + 2)
        : text.Word(figure.Next + 1) is "more" or "plus" or "mehr" or "piu" or "mas" ? new SizeFigure(figure.Next + 2) { Of = figure.Value, IsRoman = figure.IsRoman, Hedge = SizeHedge.AtLeast }
        : Numerals.Either(text, figure.Next + 1) is { } other ? new SizeFigure(other.Next) { IsChoice = true }
        : new SizeFigure(figure.Next) { Of = figure.Value, IsRoman = figure.IsRoman };

    private static SizeFigure? AtMost(int most, int next) => most < 1 ? null : new SizeFigure(next) { Hedge = SizeHedge.AtMost, Bounds = new SizeBounds(null, most) };
}

using EditionRegister.Domain.Reading.Text;

namespace EditionRegister.Domain.Reading.Inscriptions.Copies;

/// <summary>Finds fractions: 3/12, IV/X, ?/75, /75, 32/at least 49, 07/35, 35 of 75, and after a mark 9-10 as well.</summary>
internal static class Fractions
{
    /// <param name="text">The text.</param>
    /// <param name="at">The token it should begin at.</param>
    /// <param name="before">What stands before it.</param>
    public static Fraction? At(TokenText text, int at, Before before)
    {
        if (text.IsSign(at, '/'))
        {
            return WithoutNumber(text, at);
        }

        if (Number(text, at) is not { } number)
        {
            return null;
        }

        var (doubted, next) = number.IsUnknown ? (false, number.Next) : Hedges.Behind(text, number.Next);

        if (PartingAt(text, next, before, out var size) is not { } parting || (doubted && parting == Parting.InWords) || Size(text, number, size) is not { } figure || (number.IsUnknown && figure.IsUnknown))
        {
            return null;
        }

        // 1/4-12 is a measure and something else; 5/c. 20-25 and ?/125-130 are sizes.
        return figure.IsRange && !number.IsUnknown && Hedges.Before(text, size).Hedge == SizeHedge.None ? null : new Fraction(at, number, parting, figure) { IsNumberDoubted = doubted };
    }

    /// <summary>Whether what stands behind can part a number from a size; most figures and words have none, and need no further look.</summary>
    public static bool MayBegin(TokenText text, int at) =>
        text.IsSign(at, '/') || text.IsAnySign(at + 1, "/-([?") || text.Word(at + 1) is "of" or "out" or "sur" or "su" or "von" or "from" or "di" or "de";

    /// <summary>12 bis/30: a sheet more than the numbers; what it counts as is not for the reader to say.</summary>
    public static int? Beyond(TokenText text, int at) =>
        text.IsDigits(at) && text.Word(at + 1) is "bis" or "ter" && text.IsSign(at + 2, '/') && Numerals.Either(text, at + 3) is { } size ? size.Next : null;

    private static Numeral? Number(TokenText text, int at) =>
        text.Written(at) is "0" ? new Numeral(NumeralKind.Arabic, 0, at + 1) : Numerals.Either(text, at) ?? Numerals.Padded(text, at) ?? (text.IsSign(at + 1, '/') ? Numerals.MixedRoman(text, at) : null);

    private static SizeFigure? Size(TokenText text, Numeral number, int at) =>
        SizeFigures.At(text, at, words: false)
        ?? (text.Word(at) is "unlimited" or "open" or "illimite" or "illimitee" or "illimitata" or "ilimitada" or "unlimitiert" ? new SizeFigure(at + 1) { IsUnlimited = true }
            : text.Written(at) is "0" ? new SizeFigure(at + 1) { Of = 0 }
            : number.IsRoman && Numerals.MixedRoman(text, at) is { } mixed ? new SizeFigure(mixed.Next) { Of = mixed.Value, IsRoman = true }
            : null);

    /// <summary>/75 and /75?: the size alone, at the beginning of the text.</summary>
    private static Fraction? WithoutNumber(TokenText text, int at) =>
        at == 0 && !text.IsApart(at + 1) && SizeFigures.At(text, at + 1, words: false) is { IsUnknown: false, IsRoman: false } size
            ? new Fraction(at, new Numeral(NumeralKind.Unknown, 0, at), Parting.Tight, size)
            : null;

    private static Parting? PartingAt(TokenText text, int at, Before before, out int size)
    {
        size = at + 1;

        if (text.IsSign(at, '/'))
        {
            return text.IsApart(at) ? Parting.Spaced : text.IsApart(at + 1) ? Parting.LineBreak : Parting.Tight;
        }

        if (before == Before.Mark && text.IsSign(at, '-') && !text.IsApart(at) && !text.IsApart(at + 1))
        {
            return Parting.Dash;
        }

        size = text.IsWord(at, "out") && text.IsWord(at + 1, "of") ? at + 2 : at + 1;

        return text.Word(at) is "of" or "out" or "sur" or "su" or "von" ? Parting.InWords
            : before != Before.Anything && text.Word(at) is "from" or "di" or "de" ? Parting.InWords
            : null;
    }
}

/// <summary>What stands before a fraction, as far as it says what the fraction is.</summary>
internal enum Before : byte
{
    Anything,

    /// <summary>Edition, number, copy: it is announced.</summary>
    EditionWord,

    /// <summary>The mark of a kind of proof.</summary>
    Mark,
}

using EditionRegister.Domain.Reading.Text;

namespace EditionRegister.Domain.Reading.Inscriptions;

internal enum FractionStanding : byte
{
    /// <summary>A number and a size.</summary>
    Good,

    /// <summary>It could be something else; nothing is guessed.</summary>
    Doubtful,

    /// <summary>No sheet can be that one: 13/12, 0/12.</summary>
    Impossible,
}

/// <summary>A number over a size, as it stands in a text.</summary>
internal readonly record struct Fraction(int Start, int Next, FractionStanding Standing)
{
    /// <summary>Null where a question mark stands for it, or nothing.</summary>
    public int? Number { get; init; }

    /// <summary>Null where it is a range, a choice or unlimited.</summary>
    public int? Of { get; init; }

    public bool IsUnlimited { get; init; }

    public bool IsRoman { get; init; }

    public SizeHedge Hedge { get; init; }

    /// <summary>Written with the word: 35 of 75.</summary>
    public bool IsInWords { get; init; }
}

/// <summary>Finds fractions: 3/12, IV/X, ?/75, /75, 32/at least 49, 35 of 75, and after a mark 9-10 as well.</summary>
internal static class Fractions
{
    /// <param name="text">The text.</param>
    /// <param name="at">The token it should begin at.</param>
    /// <param name="announced">A mark, or a word for an edition, stands before: then a dash is enough, and doubt is smaller.</param>
    public static Fraction? At(TokenText text, int at, bool announced)
    {
        if (text.IsSign(at, '/'))
        {
            return WithoutNumber(text, at);
        }

        if (Numerals.Either(text, at) is not { } number)
        {
            return LeadingZero(text, at);
        }

        // 12 bis/30: a sheet more than the numbers; what it counts as is not for the reader to say.
        if (text.Word(number.Next) is "bis" or "ter" && text.IsSign(number.Next + 1, '/') && Numerals.Either(text, number.Next + 2) is { } beyond)
        {
            return new Fraction(at, beyond.Next, FractionStanding.Doubtful);
        }

        var slash = text.IsSign(number.Next, '/');
        var dash = announced && text.IsSign(number.Next, '-') && !text.IsApart(number.Next);
        var of = text.IsWord(number.Next, "of") || (text.IsWord(number.Next, "from") && announced) || text.IsWord(number.Next, "sur") || text.IsWord(number.Next, "von");

        if (!slash && !dash && !of)
        {
            return null;
        }

        var (hedge, next) = Hedges.Before(text, number.Next + 1);

        if (text.Word(next) is "unlimited" or "open" or "illimite" && slash)
        {
            return new Fraction(at, next + 1, FractionStanding.Good) { Number = ValueOf(number), IsUnlimited = true, IsRoman = number.IsRoman };
        }

        if (Numerals.Either(text, next) is not { } size || (of && !announced && (number.IsRoman || size.IsRoman || number.IsUnknown || (hedge == SizeHedge.None && at > 0))))
        {
            return null;
        }

        return IsSomethingElse(text, at, number, slash, size, hedge, announced) ? null : Judge(text, at, number, of, size, hedge, announced);
    }

    private static int? ValueOf(Numeral number) => number.IsUnknown ? null : number.Value;

    private static Fraction? LeadingZero(TokenText text, int at) =>
        text.IsDigits(at) && text.Written(at) is "0" && text.IsSign(at + 1, '/') && text.IsDigits(at + 2) && !text.IsSign(at + 3, '/')
            ? new Fraction(at, at + 3, FractionStanding.Impossible)
            : null;

    /// <summary>/75 and /75?: the size alone, at the beginning of the text.</summary>
    private static Fraction? WithoutNumber(TokenText text, int at)
    {
        if (at != 0 || text.IsApart(at + 1) || Numerals.Either(text, at + 1) is not { IsUnknown: false } size)
        {
            return null;
        }

        var (doubted, next) = Hedges.Behind(text, size.Next);

        return new Fraction(at, next, FractionStanding.Good) { Of = size.Value, IsRoman = size.IsRoman, Hedge = doubted ? SizeHedge.About : SizeHedge.None };
    }

    /// <summary>Parts of dates, decimals, chains and line breaks.</summary>
    private static bool IsSomethingElse(TokenText text, int at, Numeral number, bool slash, Numeral size, SizeHedge hedge, bool announced)
    {
        var chainedBefore = text.IsSign(at - 1, '/') && !text.IsApart(at) && (text.IsDigits(at - 2) || Numerals.Roman(text, at - 2) is not null);
        var decimalBefore = text.IsAnySign(at - 1, ".,-") && !text.IsApart(at) && text.IsDigits(at - 2);
        var chainedBehind = text.IsSign(size.Next, '/') && !text.IsApart(size.Next + 1) && size.Next + 1 < text.Count
            && (text.IsDigits(size.Next + 1) || Numerals.Roman(text, size.Next + 1) is not null || text.IsSign(size.Next + 1, '?'));
        var decimalBehind = text.IsAnySign(size.Next, ".,") && !text.IsApart(size.Next) && !text.IsApart(size.Next + 1) && text.IsDigits(size.Next + 1);
        var lineBreak = slash && !text.IsApart(number.Next) && text.IsApart(number.Next + 1) && hedge == SizeHedge.None && number.Value > size.Value && !number.IsUnknown && !size.IsUnknown;
        var years = NoEditionNumbers.IsYear(number.Value) && size.Value < 100;
        var romanWords = number.IsRoman && size.IsRoman && !HasCounting(text, at) && !HasCounting(text, size.Next - 1);
        var mixedChain = text.IsSign(at - 1, '/') && number.IsRoman;

        // A scale, a page, a measure, or a whole number and a part of it: 7 3/8.
        var measure = !announced && !number.IsRoman && !number.IsUnknown
            && (NoEditionNumbers.IsAnnounced(text, at) || NoEditionNumbers.IsMeasure(text, size.Next, IsQuoted(text, at, size)) || (text.IsDigits(at - 1) && NoEditionNumbers.IsRulersPart(size.Value) && number.Value < size.Value));

        return measure || chainedBefore || decimalBefore || chainedBehind || decimalBehind || lineBreak || years || romanWords || mixedChain;
    }

    // C/D and M/L are initials; a roman count has an I, a V or an X, on one side at least.
    private static bool HasCounting(TokenText text, int at) => text.Word(at).IndexOfAny('i', 'v', 'x') >= 0;

    private static Fraction Judge(TokenText text, int at, Numeral number, bool inWords, Numeral size, SizeHedge hedge, bool announced)
    {
        var quoted = IsQuoted(text, at, size);
        var (doubted, next) = Hedges.Behind(text, size.Next);
        var other = text.IsWord(next, "or") && text.IsDigits(next + 1);
        var standing = IsImpossible(number, size) ? FractionStanding.Impossible
            : other || IsDoubtful(text, at, number, size, quoted, announced) ? FractionStanding.Doubtful
            : FractionStanding.Good;
        var range = text.IsSign(next, '-') && text.Figure(next + 1) > size.Value && !text.IsApart(next + 1) && (hedge != SizeHedge.None || number.IsUnknown);

        return new Fraction(at, range ? next + 2 : next, standing)
        {
            Number = ValueOf(number),
            Of = other || range ? null : ValueOf(size),
            IsRoman = number.IsRoman || size.IsRoman,
            Hedge = hedge != SizeHedge.None ? hedge : doubted || range ? SizeHedge.About : SizeHedge.None,
            IsInWords = inWords,
        };
    }

    private static bool IsQuoted(TokenText text, int at, Numeral size) => text.IsSign(at - 1, '"') && text.IsSign(size.Next, '"');

    private static bool IsImpossible(Numeral number, Numeral size) => !size.IsUnknown && (size.Value == 0 || (!number.IsUnknown && (number.Value == 0 || number.Value > size.Value)));

    private static bool IsDoubtful(TokenText text, int at, Numeral number, Numeral size, bool quoted, bool announced)
    {
        // Nobody numbers two hundred sheets in roman; MCMXL/MCMXLI is a span of years.
        if (size.IsUnknown || (text.IsWord(number.Next, "of") && !announced) || (size.IsRoman && size.Value > 200))
        {
            return true;
        }

        if (number.IsUnknown || number.IsRoman || size.IsRoman || announced)
        {
            return text.IsSign(at - 1, '-') && !text.IsApart(at) && at == 1;
        }

        var afterWord = text.IsWord(at - 1) || (text.IsAnySign(at - 1, ".,)") && text.IsWord(at - 2));
        var ruler = NoEditionNumbers.IsRulersPart(size.Value) && number.Value < size.Value;

        return (ruler && (quoted || afterWord))
            || (text.IsSign(at - 1, '-') && !text.IsApart(at))
            || NoEditionNumbers.IsMonth(text.Word(at - 1)) || (text.IsSign(at - 1, '.') && NoEditionNumbers.IsMonth(text.Word(at - 2)))
            || (afterWord && LooksLikeMonthAndYear(number.Value, size.Value, inBrackets: text.IsSign(size.Next, ')') && text.IsSign(at - 2, '(')))
            || text.Written(size.Next - 1) is ['0', ..];
    }

    // Marren 11/69: a name and November 1969, as likely as a copy of an edition of an odd size.
    private static bool LooksLikeMonthAndYear(int number, int size, bool inBrackets) => number <= 12 && size is > 31 and < 100 && (inBrackets || size % 5 != 0);
}

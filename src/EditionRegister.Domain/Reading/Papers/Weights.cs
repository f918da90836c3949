using EditionRegister.Domain.Reading.Sizes;
using EditionRegister.Domain.Reading.Text;
using EditionRegister.Domain.Sizes;

namespace EditionRegister.Domain.Reading.Papers;

/// <summary>Finds weights: 300 gsm, 300 g/m², 300g; 140 lb (22 x 30 in), 90 lb cover, 90 lb basis 25 x 38.</summary>
internal static class Weights
{
    // No paper is lighter or heavier; a figure beyond says something else. Common practice, no source.
    private const int Least = 1_00;
    private const int Most = 5_000_00;

    /// <summary>Hundredths of g/m².</summary>
    public static int? Grams(TokenText text, int at, out int next)
    {
        next = at;

        return Hundredths(text, at, out var unit) is { } grams and >= Least and <= Most && IsGrams(text, unit, out next) && !PaperRest.IsInAFigure(text, next) ? grams : null;
    }

    public static PaperWeight? Pounds(TokenText text, int at, out int next)
    {
        next = at;

        if (Hundredths(text, at, out var unit) is not { } pounds || pounds is < Least or > Most || !IsPounds(text, unit, out next))
        {
            return null;
        }

        if (BasisBehind(text, ref next) is { } basis)
        {
            return new PaperWeight { Pounds = pounds, Basis = basis };
        }

        var grade = GradeBehind(text, ref next) ?? (IsAlone(text, at - 1) ? BasisSize.Of(text.Word(at - 1)) : null);

        return new PaperWeight { Pounds = pounds, Basis = grade?.Size, BasisWord = grade?.Word };
    }

    /// <summary>basis 25 x 38, apart from the pounds it belongs to.</summary>
    public static Size? Basis(TokenText text, int at, out int next)
    {
        next = at;
        var start = text.IsWord(at + 1, "size") || text.IsAnySign(at + 1, ":=") ? at + 2 : at + 1;

        return text.IsWord(at, "basis") ? BasisAt(text, start, ref next) : null;
    }

    /// <summary>The token of a word that only announces what follows: cover 90 lb, weight: 300 g.</summary>
    public static int StartOf(TokenText text, int at, PaperWeight? pounds)
    {
        if (pounds?.BasisWord is not null && text.IsWord(at - 1, pounds.BasisWord) && IsAlone(text, at - 1))
        {
            return at - 1;
        }

        var word = text.IsAnySign(at - 1, ":=") ? at - 2 : at - 1;

        return text.Word(word) is "weight" or "grammage" or "gewicht" or "grammatur" or "flachengewicht" or "grammatura" or "gramaje" ? word : at;
    }

    // The grade is all that is said before: in "Hill Cover 90 lb" it may be part of a name.
    private static bool IsAlone(TokenText text, int at) => at == 0 || PaperRest.Separates(text, at - 1);

    private static int? Hundredths(TokenText text, int at, out int next)
    {
        next = at;

        if (!text.IsDigits(at) || (at > 0 && !text.IsApart(at) && (text.IsWord(at - 1) || text.IsAnySign(at - 1, "-/.#") || PaperRest.IsInAFigure(text, at - 1))) || Figures.At(text, at) is not { Fault: SizeFault.None, IsGrouped: false, IsFraction: false } figure)
        {
            return null;
        }

        next = figure.Next;

        return (int)Math.Min(Most + 1L, figure.Above * 100 / figure.Below);
    }

    private static bool IsGrams(TokenText text, int at, out int next)
    {
        at = text.IsSign(at, '-') && !text.IsApart(at) ? at + 1 : at;
        next = at + 1;

        if (text.IsWord(at, "gsm"))
        {
            return true;
        }

        if (text.Word(at) is not ("g" or "gr" or "grs" or "gm" or "gms" or "gram" or "grams" or "gramm" or "gramme" or "grammes" or "grammi" or "gramos"))
        {
            return false;
        }

        next = SquareMetre(text, text.IsSign(next, '.') && !text.IsApart(next) ? next + 1 : next);

        return true;
    }

    /// <summary>/m², per square metre, m2, /qm: the token behind it, or the same where only grams are written.</summary>
    private static int SquareMetre(TokenText text, int at)
    {
        var unit = text.IsSign(at, '/') || text.Word(at) is "per" or "pro" or "par" or "al" ? at + 1 : at;

        return text.IsWord(unit, "m") && (text.Written(unit + 1) is "2" or "\u00B2") ? unit + 2
            : text.Word(unit) is "qm" or "sqm" ? unit + 1
            : text.Word(unit) is "square" or "sq" && Units.OfWord(text.Word(unit + 1)) == LengthUnit.Metre ? unit + 2
            : text.Word(unit) is "quadratmeter" ? unit + 1
            : text.Word(at - 1) is "gm" && text.Written(at) is "2" or "\u00B2" ? at + 1
            : at;
    }

    private static bool IsPounds(TokenText text, int at, out int next)
    {
        at = text.IsSign(at, '-') && !text.IsApart(at) ? at + 1 : at;
        next = text.IsSign(at + 1, '.') && !text.IsApart(at + 1) ? at + 2 : at + 1;

        return text.Word(at) is "lb" or "lbs" or "pound" or "pounds" || (text.IsSign(at, '#') && !text.IsApart(at));
    }

    /// <summary>(22 x 30 in), (basis 25 x 38), /22x30: in inches unless it says otherwise, as pounds are.</summary>
    private static Size? BasisBehind(TokenText text, ref int next)
    {
        if (Breaks.IsNewLine(text, next))
        {
            return null;
        }

        if (text.IsSign(next, '/'))
        {
            return BasisAt(text, next + 1, ref next);
        }

        if (!text.IsSign(next, '('))
        {
            return null;
        }

        var end = next + 1;
        var basis = Basis(text, next + 1, out var named) is { } said ? said : BasisAt(text, next + 1, ref end);
        end = Math.Max(end, named);

        if (basis is null || !text.IsSign(end, ')'))
        {
            return null;
        }

        next = end + 1;

        return basis;
    }

    private static Size? BasisAt(TokenText text, int at, ref int next)
    {
        if (Group.At(text, at) is not { Count: 2 } read || !SheetsWritten.IsJoined(text, read) || (read.HasUnit ? read : read.In(LengthUnit.Inch)) is not { Fault: SizeFault.None } group)
        {
            return null;
        }

        // 22 x 30 in / 56 x 76 cm: the inches are what the pounds are counted for.
        next = text.IsAnySign(group.Next, "/=") && SizePair.Of(text, group) is { Second: not null, Fault: SizeFault.None } pair ? pair.Next : group.Next;

        return new Size(new Length(group[0]), new Length(group[1]));
    }

    /// <summary>90 lb cover, 90 lb. text stock.</summary>
    private static BasisSize? GradeBehind(TokenText text, ref int next)
    {
        var grade = Breaks.IsNewLine(text, next) ? null : BasisSize.Of(text.Word(next));
        next = grade is null ? next : text.Word(next + 1) is "stock" or "weight" or "wt" ? next + 2 : next + 1;

        return grade;
    }
}

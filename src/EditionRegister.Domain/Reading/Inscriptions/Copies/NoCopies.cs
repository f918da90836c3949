using EditionRegister.Domain.Reading.Text;

namespace EditionRegister.Domain.Reading.Inscriptions.Copies;

/// <summary>What looks like a copy's number and surely is none: dates, measures, scales, pages, files, chains of figures and lines.</summary>
internal static class NoCopies
{
    public static bool IsOne(TokenText text, Fraction fraction, Before before, Surroundings around) =>
        IsPartOfMore(text, fraction, before) || IsLines(text, fraction, before) || IsDate(text, fraction, before) || IsInitials(text, fraction, before) || IsFile(text, fraction, before, around)
        || (before != Before.Mark && IsMeasure(text, fraction, before, around));

    /// <summary>A link of a chain, the end of a decimal or a code, a price.</summary>
    private static bool IsPartOfMore(TokenText text, Fraction fraction, Before before)
    {
        var (at, next) = (fraction.Start, fraction.Next);

        if (!text.IsApart(at) && (text.IsAnySign(at - 1, "$£€¢@'\u00B0") || (before != Before.Mark && text.IsAnySign(at - 1, ".,-") && IsCode(text, at - 1))))
        {
            // '1/25 Three Green Pillars' is a quotation.
            return !text.IsSign(at - 1, '\'') || text.IsDigits(at - 2) || fraction.Size.Of is > 1400;
        }

        var above = text.IsSign(at - 1, '/') && (text.IsDigits(at - 2) || Numerals.Roman(text, at - 2) is not null) && IsSameLine(text, fraction, at);
        var behind = text.IsSign(next, '/') && (text.IsDigits(next + 1) || Numerals.Roman(text, next + 1) is not null || text.IsAnySign(next + 1, "?'") || (text.IsSign(next + 1, '/') && text.IsDigits(next + 2))) && IsSameLine(text, fraction, next + 1);
        var decimals = text.IsAnySign(next, ".,-") && !text.IsApart(next) && !text.IsApart(next + 1) && text.IsDigits(next + 1);

        return above || behind || decimals;
    }

    /// <summary>9.779, US-403, D.5, but not No.29 and no edition's word.</summary>
    private static bool IsCode(TokenText text, int sign) =>
        text.IsDigits(sign - 1)
        || (text.IsWord(sign - 1) && !text.IsApart(sign) && (text.IsSign(sign, '-') || text[sign - 1].Length == 1) && text.Word(sign - 1) is not "n");

    /// <summary>Whether a slash beside a fraction is written as the fraction's own is; a wider one parts lines.</summary>
    private static bool IsSameLine(TokenText text, Fraction fraction, int behind) => fraction.Parting is not (Parting.Tight or Parting.Dash) || !text.IsApart(behind);

    /// <summary>Figures on two lines, with the slash that stands for the line's end.</summary>
    private static bool IsLines(TokenText text, Fraction fraction, Before before)
    {
        if (fraction.Parting is Parting.Tight or Parting.Dash or Parting.InWords || before == Before.Mark || fraction.Size.Hedge != SizeHedge.None || fraction.Number.IsUnknown)
        {
            return false;
        }

        var isAlone = fraction.Start == 0 && fraction.Next == text.Count;

        return (fraction.IsImpossible && !isAlone) || fraction.Number.IsRoman != fraction.Size.IsRoman;
    }

    private static bool IsDate(TokenText text, Fraction fraction, Before before)
    {
        var (one, two, at) = (fraction.Number.Value, fraction.Size.Of ?? 0, fraction.Start);

        // 1770/72[?]
        if (fraction.Number.Kind == NumeralKind.Arabic && !fraction.Size.IsRoman && fraction.Parting != Parting.InWords && DateParts.IsYear(one) && (two is > 0 and < 100 || (fraction.Size.IsUnknown && before != Before.Mark)))
        {
            return true;
        }

        // II/2026
        if (fraction.Number.IsRoman && !fraction.Size.IsRoman && DateParts.IsModernYear(two))
        {
            return true;
        }

        if (before != Before.Anything || !fraction.IsPlain || fraction.Parting == Parting.InWords)
        {
            return false;
        }

        var month = text.IsAnySign(at - 1, ".,") ? at - 2 : at - 1;
        var behindMonth = one <= 31 && (DateParts.IsMonth(text.Word(month)) || text.Word(month) is "due" or "dated" or "received");
        var behindDay = two < 100 && text.IsDigits(at - 1) && DateParts.IsMonth(text.Word(at - 2));
        var dayFirst = fraction.IsImpossible && DateParts.IsDay(one, two) && text.IsSign(at - 1, ',') && text.IsWord(at - 2);
        var beforeYear = fraction.IsImpossible && DateParts.IsDay(one, two) && text.IsSign(fraction.Next, ',') && text.Figure(fraction.Next + 1) is { } year && DateParts.IsYear(year);
        var inBrackets = one <= 12 && two is > 31 and < 100 && text.IsSign(fraction.Next, ')') && text.IsWord(at - 1) && (text.IsAnySign(at - 2, "(") || text.IsWord(at - 2));

        return behindMonth || behindDay || dayFirst || beforeYear || inBrackets || (DateParts.IsModernYear(two) && (one <= 31 || DateParts.IsYear(one)));
    }

    // C/D and M/L are initials; a roman count has an I, a V or an X, on one side at least, and 12/C says nothing.
    private static bool IsInitials(TokenText text, Fraction fraction, Before before)
    {
        var number = fraction.Number.IsRoman && !HasCounting(text, fraction.Start);
        var size = fraction.Size.IsRoman && !HasCounting(text, fraction.Next - 1);

        var year = fraction.Number.Kind == NumeralKind.Arabic && fraction.Size.IsRoman && (DateParts.IsYear(fraction.Number.Value) || (text[fraction.Next - 1].Length == 1 && text.IsSign(fraction.Next, '.') && text.IsWord(fraction.Next + 1)));

        return year || (number && ((size && before != Before.Mark) || !fraction.Size.IsRoman)) || (size && !fraction.Number.IsRoman && !fraction.Number.IsUnknown);
    }

    private static bool HasCounting(TokenText text, int at) => text.Word(at).IndexOfAny('i', 'v', 'x') >= 0;

    /// <summary>3660/2, 446/180 behind "dealer's number", 1/12 behind "page", 713/2.</summary>
    private static bool IsFile(TokenText text, Fraction fraction, Before before, Surroundings around)
    {
        var huge = fraction.IsPlain && fraction.IsImpossible && fraction.Number.Value >= 1_000;
        var lopsided = fraction.IsPlain && fraction.IsImpossible && fraction.Size.Of > 0 && fraction.Number.Value >= 100 && fraction.Number.Value / 10 >= fraction.Size.Of;

        return huge || lopsided || (around.HasVolume && fraction.IsPlain && before != Before.Mark) || (before != Before.Mark && Announcements.IsOfSomethingElse(text, fraction.Start));
    }

    private static bool IsMeasure(TokenText text, Fraction fraction, Before before, Surroundings around)
    {
        if (!fraction.IsPlain || fraction.Parting == Parting.InWords)
        {
            return false;
        }

        var (at, next) = (fraction.Start, fraction.Next);
        var inch = text.IsSign(next, '"') && !around.IsQuoted(next) && fraction.IsRulersPart;
        var foot = text.IsSign(next, '\'') && !text.IsApart(next) && !text.IsDigits(next + 1) && fraction.IsRulersPart && !text.IsSign(at - 1, '\'');
        var mixed = (fraction.IsRulersPart || fraction is { Size.Of: 3, IsImpossible: false, Number.Value: < 3 }) && text.IsDigits(at - 1) && (text[at - 1].Length != 2 || text.Written(at - 2) is not [>= 'A' and <= 'Z', >= 'a' and <= 'z', ..]);
        var whole = text.IsDigits(next) && text.IsSign(next + 1, '/') && Units.IsRulersPart(text.Figure(next), text.Figure(next + 2));
        var sum = before == Before.Anything && text.IsSign(at - 1, '=');

        return inch || foot || mixed || whole || sum || Units.IsBehind(text, next) || Units.IsMount(text, at - 1) || Units.IsMount(text, next) || (fraction.IsImpossible && before == Before.Anything && at > around.FirstMeasure);
    }
}

using EditionRegister.Domain.Reading.Inscriptions;
using EditionRegister.Domain.Reading.Text;

namespace EditionRegister.Domain.Reading.Dates;

/// <summary>Years by themselves: 1926, 310 BC, 300-900 AD, 265-589, MCMXXVI, [19]26, 197-.</summary>
internal static class Years
{
    private const int FirstRoman = 1400;
    private const int LastRoman = 2099;

    // Of a year with brackets in it: [1][9]2[6].
    private const int MostPieces = 8;

    public static DateSaid? At(TokenText text, int at) =>
        OfOneEra(text, at) ?? SmallSpan(text, at) ?? Supplied(text, at) ?? LeftOpen(text, at) ?? Roman(text, at) ?? Year(text, at);

    /// <summary>A text that is nothing but three figures, with what hedges them, is a year; anywhere else they may count anything.</summary>
    public static DateSaid? Alone(TokenText text)
    {
        var hedge = Hedge.Before(text, 0);

        return text.Figure(hedge.Next) is { } year and >= 100 && text[hedge.Next].Length == 3
            && Hedge.Behind(text, hedge.On(DateSaid.One(Moment.OfYear(year), hedge.Next + 1))) is var date && date.Next == text.Count ? date : null;
    }

    /// <summary>Years counted on over the missing year nought.</summary>
    public static int Shifted(int year, int by) => OfAstronomical(Astronomical(year) + by);

    /// <summary>50 BC is -49 in EDTF.</summary>
    public static int Astronomical(int year) => year < 0 ? year + 1 : year;

    public static int OfAstronomical(int year) => year <= 0 ? year - 1 : year;

    private static DateSaid? Year(TokenText text, int at)
    {
        var before = Eras.Before(text, at);
        var digits = before ?? at;

        if (text.Figure(digits) is not (> 0 and var year) || text[digits].Length > 4)
        {
            return null;
        }

        var behind = Eras.Behind(text, digits + 1);

        return behind is { } era ? DateSaid.One(Moment.OfYear(era.IsBefore ? -year : year), era.Next)
            : before is not null ? DateSaid.One(Moment.OfYear(year), digits + 1)
            : year is >= DateConventions.FirstPlainYear and <= DateConventions.LastPlainYear ? DateSaid.One(Moment.OfYear(year), digits + 1) with { Abbreviated = year }
            : null;
    }

    /// <summary>70-230 AD and 1000-200 BCE: the era behind the second goes for both.</summary>
    private static DateSaid? OfOneEra(TokenText text, int at)
    {
        if (text.Figure(at) is not (> 0 and var first) || !text.IsSign(at + 1, '-') || Hedge.Before(text, at + 2) is var hedge && text.Figure(hedge.Next) is not > 0)
        {
            return null;
        }

        var second = text.Figure(hedge.Next)!.Value;

        return Eras.Behind(text, hedge.Next + 1) is not { } era || text[at].Length > 4 || text[hedge.Next].Length > 4 ? null
            : era.IsBefore && first >= second ? DateSaid.Span(Moment.OfYear(-first), hedge.On(DateSaid.One(Moment.OfYear(-second), 0)).To, era.Next)
            : !era.IsBefore && first <= second ? DateSaid.Span(Moment.OfYear(first), hedge.On(DateSaid.One(Moment.OfYear(second), 0)).To, era.Next)
            : null;
    }

    /// <summary>265-589, 50-320, 960-1127: rising, and the second at least as long as the first, so that it is no abbreviation.</summary>
    private static DateSaid? SmallSpan(TokenText text, int at) =>
        text.Figure(at) is { } first and > 9 && text[at].Length is 2 or 3 && text.IsSign(at + 1, '-') && !IsRestOfFigure(text, at)
        && text.Figure(at + 2) is { } second && text[at + 2].Length is 3 or 4 && second > first
            ? DateSaid.Span(Moment.OfYear(first), Moment.OfYear(second), at + 3)
            : null;

    // The 300 of 191,300.
    private static bool IsRestOfFigure(TokenText text, int at) => text.IsAnySign(at - 1, ",./-") && text.IsDigits(at - 2) && !text.IsApart(at);

    /// <summary>[19]26 and 192[6]: figures that a cataloguer has supplied.</summary>
    private static DateSaid? Supplied(TokenText text, int at)
    {
        var (year, figures, brackets, next) = (0, 0, 0, at);

        for (; figures < 4 && next < at + MostPieces && (next == at || !text.IsApart(next)); next++)
        {
            if (text.IsAnySign(next, "[]"))
            {
                brackets += figures is > 0 and < 4 ? 1 : 0;
            }
            else if (text.Figure(next) is { } value && text[next].Length < 4)
            {
                (year, figures) = ((year * (int)Math.Pow(10, text[next].Length)) + value, figures + text[next].Length);
            }
            else
            {
                return null;
            }
        }

        return figures == 4 && brackets > 0 && year > 0 ? DateSaid.One(Moment.OfYear(year), text.IsSign(next, ']') ? next + 1 : next) : null;
    }

    /// <summary>
    /// 197- is a decade and 18-- a century, as library cataloguing writes them. Source: Anglo-American Cataloguing Rules, 2nd edition, 1.4F7,
    /// from memory; [197-] and [197-?] as in the Canadian Rules for Archival Description, publish.uwo.ca/~dspanner/rule2.htm.
    /// </summary>
    private static DateSaid? LeftOpen(TokenText text, int at)
    {
        if (text.Figure(at) is not { } figures || text[at].Length is not (2 or 3) || !text.IsSign(at + 1, '-') || text.IsApart(at + 1))
        {
            return null;
        }

        var next = text[at].Length == 3 ? at + 2 : text.IsSign(at + 2, '-') ? at + 3 : at;

        return next == at || figures < (text[at].Length == 3 ? 100 : 10) || !(next == text.Count || text.IsAnySign(next, "]?),;")) ? null
            : DateSaid.One(text[at].Length == 3 ? Moment.OfDecade(figures * 10) : Moment.OfCentury(figures + 1), next);
    }

    private static DateSaid? Roman(TokenText text, int at) =>
        text.Written(at) is ['M', _, _, ..] && Numerals.RomanValue(text.Written(at)) is { } year and >= FirstRoman and <= LastRoman
            ? DateSaid.One(Moment.OfYear(year), at + 1)
            : null;
}

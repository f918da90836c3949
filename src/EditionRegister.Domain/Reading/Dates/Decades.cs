using EditionRegister.Domain.Reading.Text;

namespace EditionRegister.Domain.Reading.Dates;

/// <summary>Decades: 1960s, 1970's, années 1920, anni '20, 1920er Jahre, mid 80's; and 1800s, which may be the century.</summary>
internal static class Decades
{
    private static readonly HashSet<string> Before = DateWords.Of("annees anni anos decade decada decennio jahre");
    private static readonly HashSet<string> Endings = DateWords.Of("s er");

    public static DateSaid? At(TokenText text, int at) => Named(text, at) ?? Ending(text, at);

    /// <summary>The 40s of 1930s-40s and of 1930-40s.</summary>
    public static DateSaid? Abbreviated(TokenText text, int at, int after)
    {
        var digits = text.IsSign(at, '\'') ? at + 1 : at;
        var first = (after / 100 * 100) + (text.Figure(digits) ?? 0);

        return text.IsDigits(digits) && text[digits].Length == 2 && first % 10 == 0 && first > after && AfterEnding(text, digits) is { } next ? DateSaid.One(Moment.OfDecade(first), next) : null;
    }

    private static DateSaid? Named(TokenText text, int at)
    {
        if (!text.Is(at, Before))
        {
            return null;
        }

        var digits = text.AfterSmall(at + 1);
        digits = text.IsSign(digits, '\'') ? digits + 1 : digits;

        return Of(text, digits, AfterEnding(text, digits) ?? digits + 1) is not { } first ? null
            : text.AfterJoin(first.Next) is { } next && Of(text, next, AfterEnding(text, next) ?? next + 1) is { } second && second.To is { } to && first.From is { } from && to.Last > from.Last
                ? DateSaid.Span(from, to, second.Next) with { Doubt = first.Doubt ?? second.Doubt }
            : first;
    }

    private static DateSaid? Ending(TokenText text, int at)
    {
        var digits = text.IsSign(at, '\'') ? at + 1 : at;

        return text.IsDigits(digits) && AfterEnding(text, digits) is { } next ? Of(text, digits, next) : null;
    }

    private static DateSaid? Of(TokenText text, int digits, int next)
    {
        if (text.Figure(digits) is not { } year || year % 10 != 0)
        {
            return null;
        }

        return text[digits].Length switch
        {
            // 1800s is mostly the century, and 1900s as often the decade: the century holds both.
            4 when year % 100 == 0 && year > 0 => DateSaid.One(Moment.OfCentury((year / 100) + 1), next) with { Doubt = DateDoubts.HundredOrTen },
            4 when year > 0 => DateSaid.One(Moment.OfDecade(year), next) with { Abbreviated = year },
            2 => DateSaid.One(Moment.OfDecade(DateConventions.CenturyOfTwoFigures + year), next).Doubted() with { Doubt = DateDoubts.NoCentury },
            _ => null,
        };
    }

    /// <summary>1960s, 1970's, 1920er, 1920er Jahre.</summary>
    private static int? AfterEnding(TokenText text, int digits)
    {
        var ending = text.IsSign(digits + 1, '\'') ? digits + 2 : digits + 1;

        return !text.Is(ending, Endings) || text.IsApart(ending) ? null : text.IsWord(ending + 1, "jahre") || text.IsWord(ending + 1, "jahren") ? ending + 2 : ending + 1;
    }
}

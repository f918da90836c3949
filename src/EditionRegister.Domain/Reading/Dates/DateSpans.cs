using EditionRegister.Domain.Reading.Text;

namespace EditionRegister.Domain.Reading.Dates;

/// <summary>A date with all that is said around it: hedges, what it leads to, between, or later.</summary>
internal static class DateSpans
{
    public static DateSaid? At(TokenText text, int at)
    {
        var hedge = Hedge.Before(text, at);

        return OpenDates.At(text, hedge) ?? Between(text, at) ?? Tolerance.Before(text, at) ?? Hedged(text, hedge);
    }

    /// <summary>A date or span behind its hedge, open at neither end but by its own words.</summary>
    public static DateSaid? Hedged(TokenText text, Hedge hedge) => One(text, hedge.Next) is { } first ? hedge.On(Spanned(text, first)) : null;

    /// <summary>Whether a date stands there, without reading all that belongs to it.</summary>
    public static bool Begins(TokenText text, int at) => One(text, Hedge.Before(text, at).Next) is not null;

    /// <summary>One date without hedges.</summary>
    private static DateSaid? One(TokenText text, int at) =>
        NumericDates.At(text, at) ?? MonthDates.At(text, at) ?? Seasons.At(text, at) ?? Periods.At(text, at) ?? Years.At(text, at);

    private static DateSaid? Between(TokenText text, int at) =>
        text.Is(at, DateWords.Between) && Alone(text, at + 1) is { } from && text.Is(from.Next, DateWords.And) && Alone(text, from.Next + 1) is { } to
            ? Joined(from, to)
            : null;

    private static DateSaid? Alone(TokenText text, int at)
    {
        var hedge = Hedge.Before(text, at);

        return One(text, hedge.Next) is { } date ? Hedge.Behind(text, hedge.On(date)) : null;
    }

    private static DateSaid Spanned(TokenText text, DateSaid date)
    {
        date = Hedge.Behind(text, date);

        // 1928-31-1947: as long as it goes on.
        while (!date.IsOpen && text.AfterJoin(date.Next) is { } next && End(text, date, next) is { } whole)
        {
            date = Hedge.Behind(text, whole);
        }

        date = OpenDates.Behind(text, IsCutShort(text, date) ? date with { Doubt = date.Doubt ?? DateDoubts.RestUnread } : date);

        return Tolerance.Behind(text, date) ?? date;
    }

    /// <summary>What a dash or a word leads to: today, the last figures of a year, or a whole date.</summary>
    private static DateSaid? End(TokenText text, DateSaid from, int next)
    {
        if (text.Is(next, DateWords.Today) || IsLeftOpen(text, next))
        {
            return DateSaid.Span(from.From, null, text.Is(next, DateWords.Today) ? next + 1 : next) with { Doubt = from.Doubt };
        }

        var hedge = Hedge.Before(text, next);
        var end = Tail(text, from, hedge.Next) ?? One(text, hedge.Next);

        return end is { } date ? Joined(from, hedge.On(date)) : null;
    }

    // 2016-13 is no span and no month.
    private static bool IsCutShort(TokenText text, DateSaid date) =>
        date.Abbreviated is not null && text.IsSign(date.Next, '-') && !text.IsApart(date.Next) && text.IsDigits(date.Next + 1) && !text.IsApart(date.Next + 1);

    // 1995- goes on.
    private static bool IsLeftOpen(TokenText text, int next) =>
        text.IsSign(next - 1, '-') && !text.IsApart(next - 1) && text.IsDigits(next - 2) && (next == text.Count || text.IsAnySign(next, ")],;"));

    private static DateSaid? Joined(DateSaid begin, DateSaid end) =>
        begin.From is not { } first || end.To is not { } last || last.EndsBefore(first) ? null
        : begin.Edtf == end.Edtf ? begin with { Next = end.Next }
        : DateSaid.Span(first, last, end.Next) with { Doubt = begin.Doubt ?? end.Doubt, Abbreviated = end.Abbreviated };

    /// <summary>The 90 of 1785-90, the 9 of 1990-9, the 2 of 1831 or 2, the 40s of 1930s-40s.</summary>
    private static DateSaid? Tail(TokenText text, DateSaid from, int at)
    {
        if (from.Abbreviated is not { } before)
        {
            return null;
        }

        var digits = text.IsSign(at, '\'') ? at + 1 : at;

        return Decades.Abbreviated(text, at, before) ?? (IsTail(text, digits) && from.To?.Kind == MomentKind.Year ? TailYear(text, digits, before) : null);
    }

    private static DateSaid? TailYear(TokenText text, int digits, int before)
    {
        var unit = text[digits].Length == 1 ? 10 : 100;
        var year = (before / unit * unit) + text.Figure(digits)!.Value;

        return year > before ? DateSaid.One(Moment.OfYear(year), digits + 1) with { Abbreviated = year } : null;
    }

    // In "1920 - 3 May 1921" and "1800-20th century" the second figure is another thing's.
    private static bool IsTail(TokenText text, int at) =>
        text.Figure(at) is not null && text[at].Length <= 2 && MonthDay.At(text, at) is null && Centuries.Bare(text, at) is null && NumericDates.At(text, at) is null;
}

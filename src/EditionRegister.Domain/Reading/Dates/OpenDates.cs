using EditionRegister.Domain.Reading.Text;

namespace EditionRegister.Domain.Reading.Dates;

/// <summary>Dates with an open end: before 1645, after c. 1830, no earlier than 1888, pre-1905, 1916 or later.</summary>
internal static class OpenDates
{
    public static DateSaid? At(TokenText text, Hedge hedge)
    {
        var open = Direction(text, hedge.Next);

        // In "prima metà del XIX secolo" the first word belongs to the part.
        if (open is not var (isBefore, next) || Part.At(text, hedge.Next) is not null || DateSpans.Hedged(text, Hedge.Before(text, next)) is not { } bound)
        {
            return null;
        }

        return hedge.On(bound.IsSpan && text.Is(hedge.Next, DateWords.Since) ? bound
            : isBefore ? DateSaid.Span(null, bound.To, bound.Next)
            : DateSaid.Span(bound.From, null, bound.Next)) with { Doubt = bound.Doubt };
    }

    /// <summary>1916 or later, c. 1793 or earlier.</summary>
    public static DateSaid Behind(TokenText text, DateSaid date)
    {
        var next = text.Is(date.Next, DateWords.Or) ? date.Next + 1 : date.Next;
        var said = next > date.Next || text.Word(next) is "onward" or "onwards";

        return !said || Starts(text, next) ? date
            : text.Is(next, DateWords.Later) ? DateSaid.Span(date.From, null, next + 1) with { Doubt = date.Doubt }
            : text.Is(next, DateWords.Earlier) ? DateSaid.Span(null, date.To, next + 1) with { Doubt = date.Doubt }
            : date;
    }

    private static (bool IsBefore, int Next)? Direction(TokenText text, int at)
    {
        if (text.Is(at, DateWords.Not))
        {
            return text.Is(at + 1, DateWords.Earlier) ? (false, at + 2) : text.Is(at + 1, DateWords.Later) ? (true, at + 2) : null;
        }

        var next = text.IsSign(at + 1, '-') ? at + 2 : at + 1;

        return text.Is(at, DateWords.Before) ? (true, next) : text.Is(at, DateWords.After) ? (false, next) : null;
    }

    // In "1850 or after 1860" the word begins another date.
    private static bool Starts(TokenText text, int at) => Direction(text, at) is var (_, next) && DateSpans.Begins(text, next);
}

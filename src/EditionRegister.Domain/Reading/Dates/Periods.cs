using EditionRegister.Domain.Reading.Text;

namespace EditionRegister.Domain.Reading.Dates;

/// <summary>Centuries and decades with the parts of them that are meant: early 20th century, mid- to late-17th century, late 18th-mid 19th century, 20th Century/2ND HALF.</summary>
internal static class Periods
{
    /// <summary>So many centuries share one word, and no more: 14th, 15th and 16th century.</summary>
    private const int MostShared = 3;

    public static DateSaid? At(TokenText text, int at) => At(text, at, shared: 0);

    private static DateSaid? At(TokenText text, int at, int shared)
    {
        var part = Part.At(text, at);
        var next = part is { } named ? text.AfterSmall(named.Next) : at;

        return Whole(text, next) is { } whole ? WithPart(text, whole, part) : shared < MostShared ? Sharing(text, next, part, shared) : null;
    }

    private static DateSaid? Whole(TokenText text, int at) => Centuries.At(text, at)?.Said ?? Decades.At(text, at);

    private static DateSaid WithPart(TokenText text, DateSaid whole, Part? part)
    {
        if (part is not null)
        {
            return Parted(whole, part);
        }

        return PartBehind(text, whole.Next) is { } behind ? Parted(whole, behind) with { Next = behind.Next } : whole;
    }

    /// <summary>18th-19th century, late 3rd-1st century BC: the word and the era behind the second go for both.</summary>
    private static DateSaid? Sharing(TokenText text, int at, Part? part, int shared)
    {
        if (Centuries.Bare(text, at) is not { } bare
            || (text.AfterJoin(bare.Next) ?? (text.Is(bare.Next, DateWords.And) || text.IsSign(bare.Next, ',') ? bare.Next + 1 : null)) is not { } next
            || At(text, next, shared + 1) is not { To: { } to, From: { } from } rest || to.Last - from.First < 20)
        {
            return null;
        }

        var first = Parted(new CenturyRead(bare.Number, IsBefore: to.Last < 0, bare.Next).Said, part);

        return first.From is { } begin && begin.First <= from.First ? DateSaid.Span(begin.Beginning, to.Ending, rest.Next) : null;
    }

    private static DateSaid Parted(DateSaid whole, Part? part)
    {
        if (part is not { } some || whole is not { From: { } from, To: { } to })
        {
            return whole;
        }

        var (first, last) = some.OfYears(from.First, to.Last);
        var said = DateSaid.Span(Moment.OfYear(first), Moment.OfYear(last), whole.Next).About() with { Doubt = whole.Doubt, Abbreviated = whole.Abbreviated };

        return from.IsDoubted ? said.Doubted() : said;
    }

    /// <summary>20th Century/EARLY; 19th century, second half; 18th century (late).</summary>
    private static Part? PartBehind(TokenText text, int at)
    {
        if (!text.IsAnySign(at, "/,(") || Part.At(text, at + 1) is not { } part)
        {
            return null;
        }

        return text.IsSign(at, '(') ? text.IsSign(part.Next, ')') ? part with { Next = part.Next + 1 } : null
            : part.Next == text.Count || text.IsAnySign(part.Next, ",;.)]|") ? part : null;
    }
}

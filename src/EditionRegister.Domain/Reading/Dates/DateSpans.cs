using EditionRegister.Domain.Reading.Inscriptions;
using EditionRegister.Domain.Reading.Text;

namespace EditionRegister.Domain.Reading.Dates;

/// <summary>Dates and spans of them with the words around: about, before, between, to.</summary>
internal static class DateSpans
{
    public static DateSpanRead? At(TokenText text, int at)
    {
        var word = text.Word(at);

        if (word is "between" or "entre" or "zwischen")
        {
            return Between(text, at + 1);
        }

        if (word is "before" or "by" or "until" or "avant" or "vor" or "ante" or "prima" && Doubted(text, at + 1) is { } end)
        {
            return end with { Earliest = end.Earliest - DateConventions.OpenYears, Edtf = Interval("..", end.Edtf) };
        }

        if (word is "after" or "apres" or "nach" or "post" or "dopo" or "since" or "from" && Doubted(text, at + 1) is { } begin)
        {
            return word is "from" ? Spanned(text, begin, about: false) : begin with { Latest = begin.Latest + DateConventions.OpenYears, Edtf = Interval(begin.Edtf, "..") };
        }

        if (word is "no" or "not" && text.Word(at + 1) is "earlier" or "later" or "before" or "after" && Doubted(text, text.IsWord(at + 2, "than") ? at + 3 : at + 2) is { } bound)
        {
            return text.Word(at + 1) is "earlier" or "before"
                ? bound with { Latest = bound.Latest + DateConventions.OpenYears, Edtf = Interval(bound.Edtf, "..") }
                : bound with { Earliest = bound.Earliest - DateConventions.OpenYears, Edtf = Interval("..", bound.Edtf) };
        }

        var (about, next) = About(text, at);

        return One(text, next) is { } first ? Spanned(text, first, about) : null;
    }

    private static DateSpanRead? One(TokenText text, int at) => CalendarDates.At(text, at) ?? EraBehind(text, at) ?? Years.At(text, at) ?? CenturyOfSpan(text, at) ?? MonthOfSpan(text, at);

    /// <summary>A date with what doubts it before and behind, without a span.</summary>
    private static DateSpanRead? Doubted(TokenText text, int at)
    {
        var (about, next) = About(text, at);

        return One(text, next) is { } one ? about ? Widened(one) : one : null;
    }

    /// <summary>c., ca., circa, about, possibly, and a question mark before.</summary>
    private static (bool About, int Next) About(TokenText text, int at)
    {
        var word = text.Word(at);
        var about = word is "c" or "ca" or "circa" or "about" or "approximately" or "approx" or "vers" or "env" or "environ" or "um" or "around" or "verso";
        var next = about ? text.IsSign(at + 1, '.') ? at + 2 : at + 1 : at;

        return (about, text.IsSign(next, '?') ? next + 1 : next);
    }

    private static DateSpanRead? Between(TokenText text, int at) =>
        Doubted(text, at) is { } start && text.Word(start.Next) is "and" or "et" or "und" && Doubted(text, start.Next + 1) is { } to
            ? start with { Latest = to.Latest, Edtf = Interval(start.Edtf, to.Edtf), Next = to.Next }
            : null;

    private static DateSpanRead Spanned(TokenText text, DateSpanRead first, bool about)
    {
        first = AfterDoubt(text, first);
        var end = End(text, first);
        var whole = end is { } last ? first with { Latest = Math.Max(first.Latest, last.Latest), Edtf = Interval(first.Edtf, last.Edtf), Next = last.Next } : first;
        whole = AfterDoubt(text, whole);

        return about ? Widened(whole) : whole;
    }

    private static DateSpanRead AfterDoubt(TokenText text, DateSpanRead date)
    {
        var (doubted, next) = Hedges.Behind(text, date.Next);

        return doubted ? date with { Next = next, Edtf = date.Edtf is { } edtf && !edtf.Contains('/', StringComparison.Ordinal) ? edtf.TrimEnd('?', '~') + "?" : date.Edtf } : date;
    }

    /// <summary>What a dash, a slash, "to" or "or" leads to: a whole date, or the last figures of a year.</summary>
    private static DateSpanRead? End(TokenText text, DateSpanRead first)
    {
        var next = first.Next;
        var dashes = 0;

        while (text.IsSign(next, '-') && dashes < 3)
        {
            (next, dashes) = (next + 1, dashes + 1);
        }

        if (dashes == 0)
        {
            if (!text.IsSign(next, '/') && text.Word(next) is not ("to" or "or" or "bis" or "a" or "through"))
            {
                return null;
            }

            next++;
        }

        var (about, at) = About(text, next);

        if (first.IsPlainYear && text.IsDigits(at) && text[at].Length is 1 or 2 && text.Figure(at) is { } tail && !CalendarDates.IsMonth(text, at + 1) && !IsCounted(text, at + 1))
        {
            var unit = text[at].Length == 1 ? 10 : 100;
            var year = (first.Earliest / unit * unit) + tail;

            return year > first.Earliest ? new DateSpanRead(year, year, Years.Iso(year), at + 1) : null;
        }

        var end = One(text, at);

        return end is { } last && last.Latest >= first.Earliest ? about ? Widened(last) : last : null;
    }

    private static bool IsCounted(TokenText text, int at) => text.Word(at) is "th" or "st" or "nd" or "rd";

    /// <summary>70-230 AD and 1000-200 BCE: the era behind the second goes for both.</summary>
    private static DateSpanRead? EraBehind(TokenText text, int at)
    {
        if (text.Figure(at) is not { } first || !text.IsSign(at + 1, '-') || text.Figure(at + 2) is not { } second)
        {
            return null;
        }

        return Years.Era(text, at + 3, out var next) switch
        {
            < 0 when first >= second => new DateSpanRead(-first, -second, null, next),
            > 0 when first <= second => new DateSpanRead(first, second, $"{Years.Iso(first)}/{Years.Iso(second)}", next),
            _ => null,
        };
    }

    /// <summary>18th-19th century, early 18th–19th century: the word behind the second goes for both.</summary>
    private static DateSpanRead? CenturyOfSpan(TokenText text, int at)
    {
        var early = text.Word(at) is "early" or "late" or "mid" ? at + 1 : at;

        if (Ordinals.Read(text, early) is not { } first || first.Value is < 1 or > 30 || !(text.IsSign(first.Next, '-') || text.Word(first.Next) is "to" or "or" or "and") || Years.At(text, first.Next + 1) is not { } second || second.Latest - second.Earliest < 20)
        {
            return null;
        }

        var from = ((first.Value - 1) * 100) + (text.Word(at) is "late" ? 50 : text.Word(at) is "mid" ? 25 : 0);

        return from > second.Latest ? null : new DateSpanRead(from, second.Latest, $"{Years.Iso(from)}~/{Years.Iso(second.Latest)}~", second.Next);
    }

    /// <summary>July - August 1966: the year behind the second goes for both.</summary>
    private static DateSpanRead? MonthOfSpan(TokenText text, int at) =>
        CalendarDates.IsMonth(text, at) && (text.IsSign(at + 1, '-') || text.Word(at + 1) is "to" or "and") && CalendarDates.At(text, at + 2) is { } second && text.IsDigits(second.Next - 1)
            ? second with { Edtf = second.Edtf is { Length: 7 } month ? $"{month[..5]}{MonthFigure(text, at)}/{month}" : Years.Iso(second.Earliest) }
            : null;

    private static string MonthFigure(TokenText text, int at) =>
        CalendarDates.At(new TokenText($"{text.Written(at)} 2000"), 0) is { Edtf: { Length: 7 } edtf } ? edtf[5..] : "01";

    private static DateSpanRead Widened(DateSpanRead date)
    {
        var by = date.Latest > date.Earliest ? DateConventions.AboutSpanYears : DateConventions.AboutYears;

        return date with
        {
            Earliest = date.Earliest - by,
            Latest = date.Latest + by,
            Edtf = date.Edtf is null ? null : string.Join('/', date.Edtf.Split('/').Select(one => one is ".." or "" || one.Length == 0 ? one : one.TrimEnd('?', '~') + "~")),
            IsPlainYear = false,
        };
    }

    private static string? Interval(string? from, string? to) => from is null || to is null || from.Contains('/', StringComparison.Ordinal) || to.Contains('/', StringComparison.Ordinal)
        ? Joined(from, to)
        : $"{from}/{to}";

    private static string? Joined(string? from, string? to) => from is null || to is null ? null : $"{from.Split('/')[0]}/{to.Split('/')[^1]}";
}

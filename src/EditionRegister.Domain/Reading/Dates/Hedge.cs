using EditionRegister.Domain.Reading.Inscriptions;
using EditionRegister.Domain.Reading.Text;

namespace EditionRegister.Domain.Reading.Dates;

/// <summary>What stands before a date and makes it less sure: c., possibly, a question mark, with the small words between.</summary>
internal readonly record struct Hedge(bool IsAbout, bool IsDoubted, int Next)
{
    private const int MostHedges = 5;
    private const int ListLetterWithin = 12;

    public static Hedge Before(TokenText text, int at)
    {
        Hedge hedge = new(false, false, text.AfterSmall(at));

        for (var few = 0; few < MostHedges && One(text, hedge) is { } more; few++)
        {
            hedge = more with { Next = text.AfterSmall(more.Next) };
        }

        return hedge;
    }

    public DateSaid On(DateSaid date)
    {
        date = IsAbout ? date.About() : date;

        return IsDoubted ? date.Doubted() : date;
    }

    /// <summary>1971?, 1971 (?), possibly in brackets behind: what it doubts is the date before it.</summary>
    public static DateSaid Behind(TokenText text, DateSaid date)
    {
        if (text.IsAnySign(date.Next, "([") && text.Is(date.Next + 1, DateWords.Possibly) && text.IsAnySign(date.Next + 2, ")]"))
        {
            return date.Doubted() with { Next = date.Next + 3 };
        }

        var (doubted, next) = Hedges.Behind(text, date.Next);

        return doubted ? date.Doubted() with { Next = next } : date;
    }

    private static Hedge? One(TokenText text, Hedge before)
    {
        var at = before.Next;

        if (text.Is(at, DateWords.About) && !IsListLetter(text, at))
        {
            return before with { IsAbout = true, Next = text.IsSign(at + 1, '.') ? at + 2 : at + 1 };
        }

        if (text.Is(at, DateWords.Possibly))
        {
            return before with { IsDoubted = true, Next = text.IsSign(at + 1, '-') && text.IsWord(at + 2, "etre") ? at + 3 : at + 1 };
        }

        return text.IsSign(at, '?') ? before with { IsDoubted = true, Next = at + 1 } : text.IsSign(at, '~') ? before with { IsAbout = true, Next = at + 1 } : null;
    }

    // A. 1930, B. 1949, C. 1973: the third of a list, and not about.
    private static bool IsListLetter(TokenText text, int at)
    {
        for (var back = at - 1; text.Written(at) is ['C'] && back >= Math.Max(0, at - ListLetterWithin); back--)
        {
            if (text.Written(back) is ['B'] && text.IsAnySign(back + 1, ".:)"))
            {
                return true;
            }
        }

        return false;
    }
}

using EditionRegister.Domain.Reading.Text;

namespace EditionRegister.Domain.Reading.Dates;

/// <summary>Which part of a century or decade is meant, as a fraction of it: early, mid to late, first half of, last quarter of.</summary>
internal readonly record struct Part(int From, int To, int Of, int Next)
{
    // One measure for all parts, so that "early to mid" and "second quarter to end" can be joined.
    private const int Measure = 12;

    private static readonly HashSet<string> Early = DateWords.Of("early beginning begin debut anfang beginn fruhes inizio inizi principios principio comienzos");
    private static readonly HashSet<string> Mid = DateWords.Of("mid middle milieu mitte meta mediados");
    private static readonly HashSet<string> Late = DateWords.Of("late end later fin ende spates fine finales fines tardo");
    private static readonly HashSet<string> First = DateWords.Of("first premier premiere erste ersten erstes prima primo primera primer");
    private static readonly HashSet<string> Second = DateWords.Of("second seconde deuxieme zweite zweiten zweites seconda secondo segunda segundo");
    private static readonly HashSet<string> Third = DateWords.Of("third troisieme dritte dritten drittes terzo terza tercer tercera");
    private static readonly HashSet<string> Fourth = DateWords.Of("fourth quatrieme vierte vierten viertes quarto cuarto");
    private static readonly HashSet<string> Last = DateWords.Of("last dernier derniere letzte letzten letztes ultimo ultima");
    private static readonly HashSet<string> Half = DateWords.Of("half moitie halfte meta mitad");
    private static readonly HashSet<string> Thirds = DateWords.Of("third tiers drittel terzo tercio");
    private static readonly HashSet<string> Quarter = DateWords.Of("quarter quart viertel quarto cuarto");
    private static readonly HashSet<string> Endings = DateWords.Of("st nd rd th re ere e eme a o");

    /// <summary>A part, or two of them joined: early-mid, mid- to late-.</summary>
    public static Part? At(TokenText text, int at)
    {
        if (One(text, at) is not { } first)
        {
            return null;
        }

        var next = text.IsSign(first.Next, '-') ? first.Next + 1 : first.Next;
        next = text.Word(next) is "to" or "bis" or "a" ? next + 1 : next;
        next = text.IsSign(next, '-') ? next + 1 : next;

        return One(text, next) is { } second && second.To >= first.To ? first with { To = second.To, Next = AfterDash(text, second.Next) } : first with { Next = AfterDash(text, first.Next) };
    }

    /// <summary>
    /// The part of some years. The year in the middle belongs to both halves, and likewise elsewhere: people count a century from 1800 or from 1801,
    /// a half to 1849 or to 1850, and what is read covers both.
    /// </summary>
    public (int First, int Last) OfYears(int first, int last)
    {
        var years = last - first + 1;

        return (first + (years * From / Of), Math.Min(last, first + (years * To / Of)));
    }

    private static Part? One(TokenText text, int at)
    {
        if (Fraction(text, at) is { } fraction)
        {
            return fraction;
        }

        (int From, int To)? named = text.Is(at, Early) ? DateConventions.Early : text.Is(at, Mid) ? DateConventions.Mid : text.Is(at, Late) ? DateConventions.Late : null;

        return named is var (from, to) ? new Part(from * Measure / DateConventions.Parts, to * Measure / DateConventions.Parts, Measure, at + 1) : null;
    }

    /// <summary>First half, 2nd half, 3. Viertel, dernier tiers.</summary>
    private static Part? Fraction(TokenText text, int at)
    {
        var (which, next) = text.Is(at, First) ? (1, at + 1) : text.Is(at, Second) ? (2, at + 1) : text.Is(at, Third) ? (3, at + 1) : text.Is(at, Fourth) ? (4, at + 1) : text.Is(at, Last) ? (-1, at + 1)
            : text.Figure(at) is >= 1 and <= 4 and var figure && (text.Is(at + 1, Endings) || text.IsSign(at + 1, '.')) ? (figure, at + 2) : (0, at);
        var of = text.Is(next, Half) ? 2 : text.Is(next, Thirds) ? 3 : text.Is(next, Quarter) ? 4 : 0;
        which = which < 0 ? of : which;

        return which > 0 && which <= of ? new Part((which - 1) * Measure / of, which * Measure / of, Measure, next + 1) : null;
    }

    private static int AfterDash(TokenText text, int at) => text.IsSign(at, '-') ? at + 1 : at;
}

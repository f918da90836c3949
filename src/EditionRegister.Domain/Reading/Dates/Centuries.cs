using EditionRegister.Domain.Reading.Inscriptions;
using EditionRegister.Domain.Reading.Text;

namespace EditionRegister.Domain.Reading.Dates;

/// <summary>A century met in a text: which one, of which era, whether the word itself stands with it, and the token after it.</summary>
internal readonly record struct CenturyRead(int Number, bool IsBefore, int Next)
{
    public (int First, int Last) Years => IsBefore ? (-Number * 100, -((Number * 100) - 99)) : (Math.Max(1, ((Number - 1) * 100) + DateConventions.FirstYearOfCentury), (Number * 100) - 1);

    public DateSaid Said => IsBefore || Number == 1
        ? DateSaid.Span(Moment.OfYear(Years.First), Moment.OfYear(Years.Last), Next)
        : DateSaid.One(Moment.OfCentury(Number), Next);
}

/// <summary>Centuries: 19th century, XIXe siècle, 19. Jahrhundert, siglo XIX, Ottocento, 3rd century BC.</summary>
internal static class Centuries
{
    private const int Most = 30;

    private static readonly HashSet<string> Behind = DateWords.Of("century centuries cent c siecle siecles secolo secoli sec siglo siglos jahrhundert jahrhunderts jahrhunderte jh jhd jhdt jhs");
    private static readonly HashSet<string> Before = DateWords.Of("siglo secolo sec s saec");
    private static readonly HashSet<string> RomanEndings = DateWords.Of("e er eme ieme o");

    // What Italian calls a century by its hundreds.
    private static readonly Dictionary<string, int> Italian = new(StringComparer.Ordinal)
    {
        ["duecento"] = 13, ["trecento"] = 14, ["quattrocento"] = 15, ["cinquecento"] = 16, ["seicento"] = 17, ["settecento"] = 18, ["ottocento"] = 19, ["novecento"] = 20,
    };

    public static CenturyRead? At(TokenText text, int at) => NumberFirst(text, at) ?? WordFirst(text, at) ?? ByName(text, at);

    /// <summary>18th, where the century is only said behind another: 18th-19th century.</summary>
    public static (int Number, int Next)? Bare(TokenText text, int at) =>
        Number(text, at) is { } read && (text.IsDigits(at) ? read.Next > at + 1 : text.Written(at) is [_, _, ..]) ? read : null;

    private static CenturyRead? NumberFirst(TokenText text, int at)
    {
        if (Number(text, at) is not { } read)
        {
            return null;
        }

        var word = text.IsSign(read.Next, '-') ? read.Next + 1 : read.Next;
        var next = text.IsSign(word + 1, '.') ? word + 2 : word + 1;

        // 18th c. 1750: here c. is about.
        return IsCentury(text, word) && !(text.IsWord(word, "c") && text.IsDigits(next)) ? WithEra(text, read.Number, next) : null;
    }

    private static bool IsCentury(TokenText text, int at) =>
        text.Is(at, Behind) || (text.Word(at).Length >= OneSlip.Shortest - 1 && (OneSlip.IsOf(text.Word(at), "century") || OneSlip.IsOf(text.Word(at), "centuries")));

    private static CenturyRead? WordFirst(TokenText text, int at)
    {
        if (!text.Is(at, Before))
        {
            return null;
        }

        var dot = text.IsSign(at + 1, '.');
        var number = dot ? at + 2 : at + 1;

        // One letter and a number may be anything: s. XIX has its dot.
        return (dot || text.Word(at).Length > 3) && Numerals.Roman(text, number) is { Value: <= Most } roman && text.Written(number) is [>= 'A' and <= 'Z', ..]
            ? WithEra(text, roman.Value, number + 1)
            : null;
    }

    private static CenturyRead? ByName(TokenText text, int at) =>
        Italian.GetAlternateLookup<ReadOnlySpan<char>>().TryGetValue(text.Word(at), out var number) ? new CenturyRead(number, IsBefore: false, at + 1) : null;

    private static CenturyRead WithEra(TokenText text, int number, int next) =>
        Eras.Behind(text, next) is { } era ? new CenturyRead(number, era.IsBefore, era.Next) : new CenturyRead(number, IsBefore: false, next);

    /// <summary>19th, 19., nineteenth, XIX, XIXe.</summary>
    private static (int Number, int Next)? Number(TokenText text, int at)
    {
        var written = text.Written(at);

        if (written is [>= 'A' and <= 'Z', _, ..] && written[^1] == 'e' && Numerals.RomanValue(written[..^1]) is { } joined and <= Most)
        {
            return (joined, at + 1);
        }

        if (Numerals.Roman(text, at) is { } roman)
        {
            return roman.Value <= Most && written[0] is >= 'A' and <= 'Z' ? (roman.Value, text.Is(at + 1, RomanEndings) && !text.IsApart(at + 1) ? at + 2 : at + 1) : null;
        }

        return Ordinals.Read(text, at) is { Value: >= 1 and <= Most } ordinal ? (ordinal.Value, ordinal.Next) : null;
    }
}

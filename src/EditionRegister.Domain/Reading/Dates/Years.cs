using System.Globalization;
using EditionRegister.Domain.Reading.Inscriptions;
using EditionRegister.Domain.Reading.Text;

namespace EditionRegister.Domain.Reading.Dates;

/// <summary>Years, decades and centuries, with early, late and halves of them.</summary>
internal static class Years
{
    private static readonly Dictionary<string, int> Ordinal = new(StringComparer.Ordinal)
    {
        ["first"] = 1, ["second"] = 2, ["third"] = 3, ["fourth"] = 4, ["last"] = -1,
    };

    public static string Iso(int year) => year >= 0 ? year.ToString("0000", CultureInfo.InvariantCulture) : year.ToString("'-'0000;'-'0000", CultureInfo.InvariantCulture);

    /// <summary>1926, 1960s, 1970's, 19th century, early 20th century, first half of the 18th century.</summary>
    public static DateSpanRead? At(TokenText text, int at)
    {
        var (part, next) = Part(text, at);
        next = text.Word(next) is "of" or "in" or "du" or "des" or "the" ? next + 1 : next;
        next = text.Word(next) is "the" ? next + 1 : next;

        return (Century(text, next) ?? Decade(text, next)) is { } whole ? Parted(whole, part) : part is null ? Year(text, at) : Year(text, next);
    }

    /// <summary>Four digits, or three and fewer with an era behind them.</summary>
    public static DateSpanRead? Year(TokenText text, int at)
    {
        if (text.Figure(at) is not { } year || text[at].Length > 4)
        {
            return null;
        }

        var era = Era(text, at + 1, out var next);

        return era < 0 ? new DateSpanRead(-year, -year, Iso(1 - year), next)
            : era > 0 ? new DateSpanRead(year, year, Iso(year), next)
            : text[at].Length == 4 ? new DateSpanRead(year, year, Iso(year), at + 1) { IsPlainYear = true }
            : null;
    }

    /// <summary>-1 for BC and BCE, 1 for AD and CE, else 0.</summary>
    public static int Era(TokenText text, int at, out int next)
    {
        next = at + 1;

        if (text.Word(at) is "bc" or "bce" or "ad" or "ce")
        {
            return text.Word(at) is "bc" or "bce" ? -1 : 1;
        }

        next = at;

        return 0;
    }

    private static DateSpanRead? Decade(TokenText text, int at)
    {
        if (text.Figure(at) is not { } year || text[at].Length != 4 || year % 10 != 0)
        {
            return null;
        }

        var tight = text.IsWord(at + 1, "s") && !text.IsApart(at + 1);
        var apostrophe = text.IsSign(at + 1, '\'') && text.IsWord(at + 2, "s");

        // 1900s is a decade to most; a century would be called the 20th.
        return !tight && !apostrophe ? null
            : new DateSpanRead(year, year + 9, string.Create(CultureInfo.InvariantCulture, $"{year / 10}X"), tight ? at + 2 : at + 3);
    }

    private static DateSpanRead? Century(TokenText text, int at)
    {
        if (Ordinals.Read(text, at) is not { } ordinal || ordinal.Value is < 1 or > 30)
        {
            return null;
        }

        var next = text.IsSign(ordinal.Next, '-') ? ordinal.Next + 1 : ordinal.Next;
        var word = text.Word(next);

        if (word is not ("century" or "centuries" or "centruy" or "cent" or "siecle" or "secolo" or "siglo" or "jahrhundert" or "jh" or "c"))
        {
            return null;
        }

        next = text.IsSign(next + 1, '.') ? next + 2 : next + 1;
        var era = Era(text, next, out var behind);
        var first = (ordinal.Value - 1) * 100;

        return era < 0
            ? new DateSpanRead(-ordinal.Value * 100, -((ordinal.Value * 100) - 99), null, behind)
            : new DateSpanRead(first + DateConventions.FirstYearOfCentury, first + 99, string.Create(CultureInfo.InvariantCulture, $"{first / 100:00}XX"), era > 0 ? behind : next);
    }

    /// <summary>Early, mid, late; first half, third quarter, last third: the numerator and denominator of the part.</summary>
    private static ((int From, int To, int Of)? Part, int Next) Part(TokenText text, int at)
    {
        var word = text.Word(at);

        if (word is "early" or "beginning" or "debut" or "anfang")
        {
            return ((0, 1, DateConventions.Halves), AfterDash(text, at + 1));
        }

        if (word is "late" or "end" or "later" or "fin" or "ende")
        {
            return ((1, 2, DateConventions.Halves), AfterDash(text, at + 1));
        }

        if (word is "mid" or "middle" or "milieu" or "mitte")
        {
            return ((1, 3, 4), AfterDash(text, at + 1));
        }

        if ((Ordinal.GetAlternateLookup<ReadOnlySpan<char>>().TryGetValue(word, out var which) || OrdinalFigure(text, at, out which)) && PartName(text, NextOf(text, at)) is { } of)
        {
            var place = which < 0 ? of : which;

            return place <= of ? ((place - 1, place, of), NextOf(text, at) + 1) : (null, at);
        }

        return (null, at);
    }

    private static int NextOf(TokenText text, int at) => text.IsDigits(at) ? at + 2 : at + 1;

    private static bool OrdinalFigure(TokenText text, int at, out int which)
    {
        which = text.Figure(at) ?? 0;

        return which is >= 1 and <= 4 && text.Word(at + 1) is "st" or "nd" or "rd" or "th";
    }

    private static int? PartName(TokenText text, int at) => text.Word(at) switch
    {
        "half" => 2,
        "third" => 3,
        "quarter" => 4,
        _ => null,
    };

    private static int AfterDash(TokenText text, int at) => text.IsSign(at, '-') ? at + 1 : at;

    private static DateSpanRead Parted(DateSpanRead whole, (int From, int To, int Of)? part)
    {
        if (part is not var (from, to, of))
        {
            return whole;
        }

        var years = whole.Latest - whole.Earliest + 1;
        var (first, last) = (whole.Earliest + (years * from / of), whole.Earliest + (years * to / of) - 1);

        return whole with { Earliest = first, Latest = last, Edtf = first < 0 ? null : $"{Iso(first)}~/{Iso(last)}~" };
    }
}

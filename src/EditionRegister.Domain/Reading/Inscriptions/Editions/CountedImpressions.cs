using EditionRegister.Domain.Reading.Inscriptions.Copies;
using EditionRegister.Domain.Reading.Text;

namespace EditionRegister.Domain.Reading.Inscriptions.Editions;

/// <summary>25 impressions, fifteen proofs, 50 prints, 7 imp., 20 artist's edition, 100 (first ed.).</summary>
internal static class CountedImpressions
{
    // "imp." stands behind a year as well as behind a count; no year of the trade's two last figures is below.
    private const int LargestBeforeImp = 31;

    public static SizeMet? At(TokenText text, int at)
    {
        if (Numerals.Cardinal(text, at) is not { Value: > 1 } count || IsPartOfMore(text, at) || DateParts.IsMonth(text.Word(at - 1)))
        {
            return null;
        }

        return Named(text, at, count) ?? Numbered(text, at, count) ?? Imp(text, at, count) ?? Impressions(text, at, count);
    }

    private static bool IsPartOfMore(TokenText text, int at) => text.IsAnySign(at - 1, "'`#+") || (text.IsAnySign(at - 1, "/.-") && !text.IsApart(at));

    /// <summary>100 (first ed.), 20 artist's edition.</summary>
    private static SizeMet? Named(TokenText text, int at, Numeral count)
    {
        if (at == 0 && text.IsSign(count.Next, '(') && HasEditionInBrackets(text, count.Next))
        {
            return new SizeMet(at, count.Next) { Of = count.Value };
        }

        var next = text.Word(count.Next) is "artists" or "artist" ? count.Next + 1 : count.Next;
        next = next > count.Next && text.IsSign(next, '\'') ? next + 1 : next;
        next = next > count.Next && text.IsWord(next, "s") ? next + 1 : next;

        return next > count.Next && text.IsWord(next, "edition") ? new SizeMet(at, next + 1) { Of = count.Value } : null;
    }

    /// <summary>20 numbered 1-20, 20 numbered from 1 to 20.</summary>
    private static SizeMet? Numbered(TokenText text, int at, Numeral count)
    {
        var from = text.IsWord(count.Next + 1, "from") ? count.Next + 2 : count.Next + 1;

        return text.IsWord(count.Next, "numbered") && text.Figure(from) == 1 && (text.IsSign(from + 1, '-') || text.Word(from + 1) is "to" or "through") && text.Figure(from + 2) == count.Value
            ? new SizeMet(at, from + 3) { Of = count.Value }
            : null;
    }

    /// <summary>7 imp.; '68 imp is a year, and so may be a figure above 31; imp. before a name is who printed it.</summary>
    private static SizeMet? Imp(TokenText text, int at, Numeral count)
    {
        var imp = text.IsSign(count.Next, '/') ? count.Next + 1 : count.Next;

        // Behind a name it is a year, and who printed it.
        if (!text.IsWord(imp, "imp") || DateParts.IsYear(count.Value) || (count.Value > LargestBeforeImp && text.IsWord(at - 1)))
        {
            return null;
        }

        var next = text.IsSign(imp + 1, '.') ? imp + 2 : imp + 1;

        return new SizeMet(at, next) { Of = count.Value, IsDoubtful = count.Value > LargestBeforeImp || text.Written(next) is [>= 'a' and <= 'z', ..] };
    }

    private static SizeMet? Impressions(TokenText text, int at, Numeral count)
    {
        if (CountWords.At(text, count.Next) is not { } end || DateParts.IsYear(count.Value))
        {
            return null;
        }

        var isAbout = text.Word(at - 1) is "estimated" or "about" or "approximately" or "circa" or "ca" || text.IsWord(count.Next, "estimated");

        // One of two known casts says how rare it is, not how many were made.
        var isRarity = text.Word(at - 1) is "of" or "from" || text.IsWord(count.Next, "known");

        return new SizeMet(at, end) { Of = count.Value, Hedge = isAbout ? SizeHedge.About : SizeHedge.None, IsDoubtful = isRarity };
    }

    private static bool HasEditionInBrackets(TokenText text, int at)
    {
        for (var next = at + 1; next < Math.Min(at + 6, text.Count) && !text.IsSign(next, ')'); next++)
        {
            if (EditionWords.IsOne(text.Word(next)))
            {
                return true;
            }
        }

        return false;
    }
}

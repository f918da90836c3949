using EditionRegister.Domain.Reading.Inscriptions.Copies;
using EditionRegister.Domain.Reading.Text;

namespace EditionRegister.Domain.Reading.Inscriptions.Editions;

/// <summary>Edition of 75, Ed. 100, Edition - 15, Ed. / 54, tirage à 30, Auflage: 40; edition no. 12 is a copy.</summary>
internal static class EditionSizes
{
    private const int MostBetween = 6;

    public static SizeMet? At(TokenText text, int at)
    {
        if (!EditionWords.IsOne(text.Word(at)))
        {
            return null;
        }

        var (next, isCopy, isOf) = Over(text, at + 1);

        if (Figure(text, next, isCopy) is not { } size || IsNoSize(text, next, size, isOf || isCopy))
        {
            return null;
        }

        if (isCopy && size is { Of: not null, Bounds: null })
        {
            return new SizeMet(at, size.Next) { Number = size.Of, IsRoman = size.IsRoman };
        }

        var met = SizeMet.Sized(at, size) with { IsDoubtful = size.IsChoice || (size.Of == 1 && !isOf) };

        return met.Of is { } of && Behind(text, met.Next, of) is { } copy ? met with { Number = copy.Value, Next = copy.Next } : met;
    }

    /// <summary>At least 61, about 5, less than 100: the size alone, where the text says no more.</summary>
    public static SizeMet? Alone(TokenText text)
    {
        if (!text.IsWord(0) || SizeFigures.At(text, 0, words: true) is not { Hedge: not SizeHedge.None } size)
        {
            return null;
        }

        return size.Next == text.Count || (size.Next == text.Count - 1 && text.IsAnySign(size.Next, ".?")) ? SizeMet.Sized(0, size) : null;
    }

    private static (int Next, bool IsCopy, bool IsOf) Over(TokenText text, int at)
    {
        var (isCopy, isOf) = (false, false);

        for (var skipped = 0; skipped < MostBetween && (text.IsAnySign(at, ".:,#-/|'(") || EditionWords.IsBetween(text.Word(at))); skipped++, at++)
        {
            // An edition with no figure behind it, and then another word: "ed. no" and "edition, de".
            isCopy |= text.IsSign(at, '#') || EditionWords.IsNumberWord(text.Word(at));
            isOf |= text.Word(at) is "of" or "to" or "size" or "a" or "de" or "di" or "von";
        }

        return (at, isCopy, isOf);
    }

    private static SizeFigure? Figure(TokenText text, int at, bool isCopy)
    {
        // A single capital letter is an edition's name: Edition B, Edition V; but edition no. V is a copy. A roman count has an I, a V or an X.
        var hedge = Hedges.Before(text, at).Next;
        var isLetter = text.IsWord(hedge) && text[hedge].Length == 1 && !(isCopy && text.Written(hedge) is ['I' or 'V' or 'X']);

        return text.IsWord(hedge) && Numerals.Roman(text, hedge) is not null && (isLetter || char.IsAsciiLetterLower(text.Written(hedge)[0]) || text.Word(hedge).IndexOfAny('i', 'v', 'x') < 0 || Numerals.Roman(text, hedge)?.Value > 200) ? null
            : text.IsSign(hedge, '?') ? null
            : SizeFigures.At(text, at, words: true);
    }

    /// <summary>A fraction is a copy's number, and is read as one; a year says when it was published; 2nd edition is its place.</summary>
    private static bool IsNoSize(TokenText text, int at, SizeFigure size, bool isPlain)
    {
        var fraction = text.IsSign(size.Next, '/') && Hedges.Before(text, at).Hedge == SizeHedge.None && (SizeFigures.At(text, size.Next + 1, words: false) is not null || text.Word(size.Next + 1) is "unlimited" or "open");
        var inWords = text.Word(size.Next) is "of" or "von" or "sur" && (text.IsDigits(size.Next + 1) || Hedges.Before(text, size.Next + 1).Hedge != SizeHedge.None);
        var year = size is { Of: { } of, Hedge: SizeHedge.None } && DateParts.IsYear(of) && !isPlain;
        var ordinal = text.Word(size.Next) is "st" or "nd" or "rd" or "th" && !text.IsApart(size.Next);

        return fraction || inWords || year || ordinal || (text.IsDigits(at) && text.IsSign(at - 1, '$'));
    }

    /// <summary>Ed. 100 - no. 3, ed 50 #40: the copy behind the size.</summary>
    private static Numeral? Behind(TokenText text, int at, int of)
    {
        at = text.IsAnySign(at, ",;-") ? at + 1 : at;

        return CopyNumbers.AfterNumberSign(text, at) is { } copy && copy.Value <= of && !text.IsSign(copy.Next, '/') ? copy : null;
    }
}

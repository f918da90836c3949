using EditionRegister.Domain.Reading.Text;

namespace EditionRegister.Domain.Reading.Inscriptions;

/// <summary>Words that say how sure a size is, and the token after them.</summary>
/// <param name="Hedge">How sure.</param>
/// <param name="Next">The token after the words.</param>
/// <param name="IsExclusive">Less than 100: the figure itself is not meant.</param>
internal readonly record struct HedgeMet(SizeHedge Hedge, int Next, bool IsExclusive = false);

/// <summary>Words before or behind a size that say how sure it is: at least, about, c., au moins, höchstens, (?).</summary>
internal static class Hedges
{
    /// <summary>The hedge that begins at a token; none, and the token itself, where no such word stands.</summary>
    public static HedgeMet Before(TokenText text, int at)
    {
        if (!text.IsWord(at))
        {
            return new HedgeMet(SizeHedge.None, at);
        }

        at = text.Word(at) is "a" or "an" or "one" ? at + 1 : at;

        return Least(text, at) ?? Most(text, at) ?? About(text, at) ?? new HedgeMet(SizeHedge.None, at);
    }

    /// <summary>A question mark right behind a figure, in brackets or not.</summary>
    public static (bool IsDoubted, int Next) Behind(TokenText text, int at) =>
        text.IsSign(at, '?') ? (true, at + 1)
        : text.IsAnySign(at, "([") && text.IsSign(at + 1, '?') && text.IsAnySign(at + 2, ")]") ? (true, at + 3)
        : (false, at);

    private static HedgeMet? Least(TokenText text, int at)
    {
        var one = text.Word(at);
        var two = text.Word(at + 1);

        return (one is "at" && two is "least" or "minimum") || (one is "au" && two is "moins") || (one is "al" && two is "meno" or "menos") || (one is "more" or "mehr" or "piu" or "mas" or "plus" && two is "than" or "als" or "di" or "de")
            ? new HedgeMet(SizeHedge.AtLeast, at + 2)
            : one is "over" or "minimum" or "mindestens" or "almeno" or "wenigstens" ? new HedgeMet(SizeHedge.AtLeast, at + 1)
            : null;
    }

    private static HedgeMet? Most(TokenText text, int at)
    {
        var one = text.Word(at);
        var two = text.Word(at + 1);

        if (one is "less" or "fewer" or "moins" or "meno" or "menos" or "weniger" && two is "than" or "de" or "di" or "als")
        {
            return new HedgeMet(SizeHedge.AtMost, at + 2, IsExclusive: true);
        }

        if (one is "no" or "not" && two is "more" && text.IsWord(at + 2, "than"))
        {
            return new HedgeMet(SizeHedge.AtMost, at + 3);
        }

        return (one is "at" && two is "most") || (one is "up" && two is "to") || (one is "au" && two is "plus") || (one is "al" && two is "massimo") || (one is "como" && two is "maximo") || (one is "bis" && two is "zu")
            ? new HedgeMet(SizeHedge.AtMost, at + 2)
            : one is "less" or "fewer" or "under" or "unter" ? new HedgeMet(SizeHedge.AtMost, at + 1, IsExclusive: true)
            : one is "maximum" or "hochstens" ? new HedgeMet(SizeHedge.AtMost, at + 1)
            : null;
    }

    private static HedgeMet? About(TokenText text, int at)
    {
        var word = text.Word(at);
        var next = text.IsSign(at + 1, '.') ? at + 2 : at + 1;

        // A C that no figure follows is a hundred, or a copy's letter.
        if (word is "c" or "ca")
        {
            return text.IsDigits(next) ? new HedgeMet(SizeHedge.About, next) : null;
        }

        return word is "about" or "approximately" or "approx" or "circa" or "possibly" or "probably" or "perhaps" or "estimated" or "around" or "planned" or "projected" or "environ" or "approximativement"
            or "ungefahr" or "etwa" or "vermutlich" or "geschatzt" or "cirka" or "forse" or "quizas" or "aproximadamente"
            ? new HedgeMet(SizeHedge.About, next)
            : word is "cerca" && text.Word(at + 1) is "de" or "di" ? new HedgeMet(SizeHedge.About, at + 2)
            : null;
    }
}

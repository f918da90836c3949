using EditionRegister.Domain.Reading.Text;

namespace EditionRegister.Domain.Reading.Inscriptions.Proofs;

/// <summary>Plus 10 artist's proofs, + 3 AP, I-X APs, sowie 5 E.A.: counts beside the edition.</summary>
internal static class ProofsBeside
{
    /// <summary>The proofs counted at a token, and the token after them; null where none are.</summary>
    public static (StatedProofs Proofs, int Next)? At(TokenText text, int at, SeriesReader series)
    {
        if (text.IsAnySign(at - 1, "/'#") || Count(text, at) is not { } count || series.At(text, count.Next) is not { } mark || mark.Series == Series.Ambiguous)
        {
            return null;
        }

        var isCounted = mark.IsPlural || count.Kind == NumeralKind.Word || IsListed(text, at) || (at <= 1 && text.IsAnySign(mark.Next, ",;"));

        if (!isCounted || !(mark.IsSure || IsListed(text, at)))
        {
            return null;
        }

        // 1 PP II: the printer's proof that is numbered II.
        var next = Numerals.Roman(text, mark.Next) is { } own && text.IsApart(mark.Next) && !text.IsWord(own.Next) ? own.Next : mark.Next;

        return (new StatedProofs(mark.Series, count.Value), next);
    }

    private static bool IsListed(TokenText text, int at) =>
        text.IsAnySign(at - 1, "+|,(;&") || text.Word(at - 1) is "plus" or "and" or "et" or "with" or "avec" or "und" or "sowie" or "mit" or "e" or "piu" or "con" or "y" or "mas" or "dont";

    private static Numeral? Count(TokenText text, int at)
    {
        if (Numerals.Roman(text, at) is { Value: 1 } && text.IsSign(at + 1, '-') && Numerals.Roman(text, at + 2) is { } last)
        {
            return last;
        }

        if (text.Figure(at) == 1 && text.IsSign(at + 1, '-') && Numerals.Arabic(text, at + 2) is { } range)
        {
            return range;
        }

        return Numerals.Cardinal(text, at) ?? (text.Word(at - 1) is "plus" || text.IsSign(at - 1, '+') ? Numerals.Roman(text, at) : null);
    }
}

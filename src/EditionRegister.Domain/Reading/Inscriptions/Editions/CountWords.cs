using EditionRegister.Domain.Reading.Text;

namespace EditionRegister.Domain.Reading.Inscriptions.Editions;

/// <summary>The words for what an edition has so many of: impressions, copies, casts, exemplaires, Abzüge.</summary>
internal static class CountWords
{
    private const int MostAdjectives = 4;

    /// <summary>The token after a word for many impressions, over what describes them; null where none stands.</summary>
    public static int? At(TokenText text, int at)
    {
        at = OverAdjectives(text, at);

        // 12 ex. cut short, as the French and the Germans do.
        if (text.Word(at) is "ex" or "expl")
        {
            return text.IsSign(at + 1, '.') && !text.IsApart(at + 1) ? at + 2 : at + 1 == text.Count ? at + 1 : null;
        }

        return text.Word(at) is "prints" or "impressions" or "copies" or "proofs" or "casts" or "pulls" or "exemplaires" or "epreuves" or "exemplare" or "exemplaren" or "abzuge" or "abzugen" or "drucke" or "drucken" or "esemplari" or "copie" or "ejemplares" or "copias" or "estampas" ? at + 1 : null;
    }

    /// <summary>Whether the casts or prints are estimated, or made in a lifetime: said of how many there are, not of a set.</summary>
    public static bool IsEstimated(TokenText text, int at) => text.Word(at) is "estimated" or "lifetime" || text.Word(at + 1) is "estimated" or "lifetime";

    /// <summary>One of them.</summary>
    public static bool IsCopy(ReadOnlySpan<char> word) => (Vocabulary.Of(word) & Opening.Copy) != 0;

    /// <summary>One of them, as it is named before its number.</summary>
    public static bool IsNumberedCopy(ReadOnlySpan<char> word) => word is "copy" or "set" or "portfolio" or "exemplaire" or "exemplar" or "esemplare" or "copia" or "ejemplar";

    private static int OverAdjectives(TokenText text, int at)
    {
        for (var skipped = 0; skipped < MostAdjectives && IsAdjective(text.Word(at)); skipped++)
        {
            at++;
        }

        return at;
    }

    private static bool IsAdjective(ReadOnlySpan<char> word) =>
        word is "estimated" or "lifetime" or "signed" or "numbered" or "known" or "and" or "only" or "lettered" or "signierte" or "nummerierte" or "signierten" or "nummerierten" or "und";
}

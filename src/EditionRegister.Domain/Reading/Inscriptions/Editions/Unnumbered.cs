using EditionRegister.Domain.Reading.Text;

namespace EditionRegister.Domain.Reading.Inscriptions.Editions;

/// <summary>Words that say there is no number or no size: unnumbered, open edition, unlimited, unique.</summary>
internal static class Unnumbered
{
    public static SizeMet? At(TokenText text, int at) => Length(text, at) is { } length ? new SizeMet(at, at + length) { IsOpen = true } : null;

    private static int? Length(TokenText text, int at)
    {
        var one = text.Word(at);
        var two = text.Word(at + 1);

        return one is "uneditioned" or "unlimited" or "unlimitiert" ? (EditionWords.IsOne(two) ? 2 : 1)
            : one is "unnumbered" or "unnummeriert" or "unnumeriert" ? (two is "impression" or "print" or "proof" or "copy" or "edition" ? 2 : 1)
            : (one is "open" && EditionWords.IsOne(two)) || (one is "offene" && EditionWords.IsOne(two)) || (EditionWords.IsOne(one) && two is "illimitee" or "illimitata" or "ilimitada" or "ouverte" or "aperta" or "abierta") ? 2
            : (one is "tirage" && two is "illimite") || (one is "non" && two is "numerote" or "numerotee" or "numerato") || (one is "nicht" && two is "nummeriert" or "numeriert") ? 2
            : one is "not" && two is "numbered" or "editioned" ? 2
            : one is "unique" ? Unique(text, at)
            : null;
    }

    /// <summary>Unique alone, or unique impression; unique yarns and sessions are nothing of an edition's.</summary>
    private static int? Unique(TokenText text, int at) =>
        text.Word(at + 1) is "impression" or "print" or "edition" || (text.IsWord(at + 1, "work") && at == 0) ? 2 : text.Count == 1 ? 1 : null;
}

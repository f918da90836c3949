using EditionRegister.Domain.Reading.Text;

namespace EditionRegister.Domain.Reading.Inscriptions.Proofs;

/// <summary>The word proof alone: what the sheet is, where it stands for itself; fade proof and proof plates are other things.</summary>
internal static class PlainProofs
{
    public static SeriesMet? At(TokenText text, int at)
    {
        if (!IsProof(text.Word(at)))
        {
            return null;
        }

        if (IsAdjective(text, at))
        {
            return new SeriesMet(Series.Proof, at, at + 1, Certainty.Silent);
        }

        var stands = BeginsHere(text, at) && EndsHere(text, at + 1) && !text.IsSign(text.Count - 1, '?');

        return new SeriesMet(Series.Proof, at, at + 1, stands ? Certainty.Sure : Certainty.Doubtful) { IsPlural = text.Word(at) is [.., 's'] };
    }

    private static bool IsProof(ReadOnlySpan<char> word) => word is "proof" or "proofs" or "epreuve" or "epreuves" or "prova" or "prueba" or "pruebas";

    /// <summary>Fade proof, dishwasher-proof.</summary>
    private static bool IsAdjective(TokenText text, int at) =>
        (text.IsSign(at - 1, '-') && !text.IsApart(at) && !text.IsApart(at - 1)) || text.Word(at - 1) is "fade" or "water" or "fire" or "oven" or "light" or "acid" or "dishwasher" or "burning" or "full" or "fool";

    private static bool BeginsHere(TokenText text, int at) =>
        at == 0 || text.IsAnySign(at - 1, "/|,;:([\"'.-") || (IsOrdinal(text, at) && text.Word(at) is not [.., 's']);

    private static bool IsOrdinal(TokenText text, int at) => NumberWords.Ordinal(text, at - 1) is not null || Ordinals.WithEnding(text, at - 2)?.Next == at;

    private static bool EndsHere(TokenText text, int at) =>
        !text.IsWord(at) || text.Word(at) is "for" or "before" or "with" or "pour" or "avant" or "fur" || text.Written(at) is [>= 'A' and <= 'Z', ..];
}

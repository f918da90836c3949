using EditionRegister.Domain.Reading.Text;

namespace EditionRegister.Domain.Reading.Inscriptions.Proofs;

/// <summary>Trial 3 and 1st trial: trial proofs by a number, where the line says no more.</summary>
internal static class TrialNumbers
{
    public static SeriesMet? At(TokenText text, int at)
    {
        if (!text.IsWord(at, "trial"))
        {
            return null;
        }

        var behind = text.IsDigits(at + 1) && at == 0 && (at + 2 == text.Count || text.IsAnySign(at + 2, "/|,"));
        var before = at == 2 && Ordinals.WithEnding(text, 0)?.Next == at && at + 1 == text.Count;

        return behind || before ? new SeriesMet(Series.Trial, at, at + 1) : null;
    }
}

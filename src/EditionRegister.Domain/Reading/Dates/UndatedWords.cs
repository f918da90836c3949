using EditionRegister.Domain.Reading.Text;

namespace EditionRegister.Domain.Reading.Dates;

/// <summary>Ways to say that there is no date: n.d., s.d., o. J., undated, senza data, sin fecha.</summary>
internal static class UndatedWords
{
    private static readonly HashSet<string> Undated = DateWords.Of("nd undated unknown undatiert unbekannt inconnue indatato");
    private static readonly HashSet<string> Without = DateWords.Of("no not without sans non ohne senza sin");
    private static readonly HashSet<string> Date = DateWords.Of("date dated datum jahr jahresangabe data datato datata fecha fechado fechada datiert");

    // n.d., s.d. (sine dato, sans date, senza data), s.a. (sine anno), s.f. (sin fecha), o.J. (ohne Jahr), o.D. (ohne Datum).
    private static readonly (string First, string Second)[] Short = [("n", "d"), ("s", "d"), ("s", "a"), ("s", "f"), ("o", "j"), ("o", "d")];

    /// <summary>Whether a text begins so.</summary>
    public static bool Begin(TokenText text)
    {
        var at = text.IsAnySign(0, "[(") ? 1 : 0;

        return text.Is(at, Undated) || (text.Is(at, Without) && text.Is(at + 1, Date))
            || (text.IsWord(at, "date") && (text.Is(at + 1, Undated) || text.IsWord(at + 1, "not")))
            || (text.IsSign(at + 1, '.') && Short.Any(said => text.IsWord(at, said.First) && text.IsWord(at + 2, said.Second)));
    }
}

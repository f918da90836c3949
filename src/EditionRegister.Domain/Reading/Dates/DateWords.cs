using EditionRegister.Domain.Reading.Text;

namespace EditionRegister.Domain.Reading.Dates;

/// <summary>The words around dates in English, French, German, Italian and Spanish, folded as <see cref="TokenText"/> folds them.</summary>
internal static class DateWords
{
    /// <summary>So many small words are passed over between a word and its date, and no more: a text of nothing else must not be walked again and again.</summary>
    private const int FewWords = 3;

    public static HashSet<string> About { get; } = Of("c ca circa cca about approximately approx around vers env environ um etwa ungefahr gegen zirka verso intorno hacia alrededor cerca");

    public static HashSet<string> Possibly { get; } = Of(
        "possibly probably perhaps maybe presumably likely peut probablement vraisemblablement vermutlich wohl wahrscheinlich vielleicht forse probabilmente posiblemente probablemente quizas");

    public static HashSet<string> Before { get; } = Of("before by until till pre ante avant vor bis prima antes hasta");

    public static HashSet<string> After { get; } = Of("after post since apres nach seit depuis ab dopo despues desde");

    /// <summary>Those of them that also begin a span: desde 1920 hasta 1925.</summary>
    public static HashSet<string> Since { get; } = Of("since seit depuis ab desde");

    public static HashSet<string> Earlier { get; } = Of("earlier before avant fruher vorher vor prima antes");

    public static HashSet<string> Later { get; } = Of("later after thereafter onward onwards apres spater danach nach dopo despues");

    public static HashSet<string> Not { get; } = Of("no not nicht pas non");

    public static HashSet<string> Or { get; } = Of("or and ou et oder und o e y u");

    public static HashSet<string> Between { get; } = Of("between entre zwischen tra fra");

    public static HashSet<string> And { get; } = Of("and et und e y");

    public static HashSet<string> To { get; } = Of("to or bis a au through thru until till al hasta ou oder o u");

    public static HashSet<string> Today { get; } = Of("present now today ongoing heute aujourd oggi hoy");

    private static readonly HashSet<string> Small = Of("the in of year than an anno annee l le la les il lo i der die das dem den des du de di del della dell al au en im am el los las jahr ano dated");

    public static HashSet<string> Of(string words) => new(words.Split(' '), StringComparer.Ordinal);

    public static bool Is(this TokenText text, int at, HashSet<string> words) => words.GetAlternateLookup<ReadOnlySpan<char>>().Contains(text.Word(at));

    /// <summary>The token after articles and the like: l'année, il, del, the year.</summary>
    public static int AfterSmall(this TokenText text, int at)
    {
        for (var few = 0; few < FewWords && text.Is(at, Small); few++)
        {
            at = text.IsSign(at + 1, '\'') ? at + 2 : at + 1;
        }

        return at;
    }

    /// <summary>The token after a dash, or up to three of them, a slash, or a word that leads on to a second date; null where none stands.</summary>
    public static int? AfterJoin(this TokenText text, int at)
    {
        if (text.IsAnySign(at, "-~"))
        {
            return text.IsSign(at + 1, '-') ? text.IsSign(at + 2, '-') ? at + 3 : at + 2 : at + 1;
        }

        return text.IsSign(at, '/') || text.Is(at, To) ? at + 1 : null;
    }
}

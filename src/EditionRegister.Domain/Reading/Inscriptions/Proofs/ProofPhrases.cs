using System.Collections.Frozen;
using EditionRegister.Domain.Reading.Text;

namespace EditionRegister.Domain.Reading.Inscriptions.Proofs;

/// <summary>The words for kinds of proof in English, French, Italian, Spanish and German use.</summary>
internal static class ProofPhrases
{
    // A plural that English does not make with an s at the end is written out, with a star before it.
    // Artist's, printer's, trial, state and working proofs, hors commerce and bon à tirer as glossaries of the trade give them; the other words from memory.
    private static readonly (string Series, string Words)[] Table =
    [
        (Series.Artists, "artist's proof, artists proof, artist proof, artists' proof, artists's proof, art proof, épreuve d'artiste, *épreuves d'artiste, épreuve artiste, exemplaire d'artiste, *exemplaires d'artiste, copie d'artiste"),
        (Series.Artists, "prova d'artista, *prove d'artista, prova d'autore, *prove d'autore, copia d'artista, *copie d'artista, esemplare d'artista, *esemplari d'artista, prueba de artista, *pruebas de artista, prueba de autor, *pruebas de autor, copia de artista, *copias de artista"),
        (Series.Artists, "Künstlerabzug, *Künstlerabzüge, Künstlerexemplar, *Künstlerexemplare, Künstlerdruck, *Künstlerdrucke, Eigendruck, *Eigendrucke"),
        (Series.Printers, "printer's proof, printers proof, printer proof, printers' proof, épreuve d'imprimeur, *épreuves d'imprimeur, épreuve de l'imprimeur, exemplaire d'imprimeur, prova di stampatore, prova dello stampatore, *prove di stampatore"),
        (Series.Printers, "prueba de impresor, prueba del impresor, *pruebas de impresor, prueba de imprenta, *pruebas de imprenta, Druckerexemplar, *Druckerexemplare, Druckerabzug, *Druckerabzüge"),
        (Series.Publishers, "publisher's proof, publishers proof, publisher proof, publishers' proof, publisher's copy, épreuve d'éditeur, *épreuves d'éditeur, exemplaire d'éditeur, prova dell'editore, *prove dell'editore, prueba de editor, prueba del editor, Verlegerexemplar, *Verlegerexemplare, Verlagsexemplar, *Verlagsexemplare"),
        (Series.HorsCommerce, "hors commerce, hors de commerce, fuori commercio, fuera de comercio, außer Handel, nicht im Handel"),
        (Series.BonATirer, "bon à tirer, ready to print, right to print, visto si stampi, si stampi, gut zum Druck, bueno para tirar, bueno para imprimir, listo para imprimir"),
        (Series.ColourTrial, "color trial proof, colour trial proof, color trail proof, color proof, colour proof, épreuve d'essai de couleur, essai de couleur, épreuve de couleur, prova di colore, *prove di colore, prueba de color, *pruebas de color, Farbprobe, Farbprobedruck, *Farbprobedrucke, Farbandruck"),
        (Series.Trial, "trial proof, trail proof, separation trial proof, épreuve d'essai, *épreuves d'essai, prova di stampa, *prove di stampa, prueba de estampa, prueba de ensayo, Probedruck, *Probedrucke, Probeabzug, *Probeabzüge, Andruck, *Andrucke"),
        (Series.Working, "working proof, work proof, épreuve de travail, *épreuves de travail, prova di lavorazione, prova di lavoro, prueba de trabajo, Arbeitsabzug, Arbeitsdruck"),
        (Series.Workshop, "workshop proof, work shop proof, shop proof, épreuve d'atelier, *épreuves d'atelier, exemplaire d'atelier, prova di bottega, prueba de taller, *pruebas de taller, Werkstattdruck, Werkstattabzug, Werkstattexemplar, *Werkstattexemplare"),
        (Series.State, "state proof, épreuve d'état, *épreuves d'état, prova di stato, *prove di stato, prueba de estado, *pruebas de estado, Zustandsdruck, *Zustandsdrucke, Zustandsabzug, *Zustandsabzüge"),
        (Series.Progressive, "progressive proof, progressive color proof, progressive colour proof, épreuve progressive, *épreuves progressives, prova progressiva, *prove progressive, prueba progresiva, *pruebas progresivas, Skalendruck, *Skalendrucke"),
        (Series.Cancellation, "cancellation proof, cancelled proof, canceled proof, cancellation impression, épreuve d'annulation, épreuve d'oblitération, prova di biffatura, prova di annullamento, prueba de cancelación, prueba de anulación, Entwertungsdruck"),
        (Series.Presentation, "presentation proof, presentation impression, presentation print, épreuve de présentation, exemplaire de présentation, prova di presentazione, prueba de presentación, Präsentationsexemplar, Widmungsexemplar"),
        (Series.Archive, "archive proof, archival proof, archive impression, archive copy, épreuve d'archive, épreuve d'archives, *épreuves d'archives, exemplaire d'archives, prova d'archivio, prueba de archivo, Archivexemplar, *Archivexemplare, Archivabzug"),
        (Series.Exchange, "exchange proof, exchange impression, exchange print, exchange copy, épreuve d'échange, exemplaire d'échange, prova di scambio, copia di scambio, prueba de intercambio, Tauschexemplar, *Tauschexemplare"),
        (Series.LegalDeposit, "legal deposit, legal deposit copy, dépôt légal, deposito legale, depósito legal, Pflichtexemplar, *Pflichtexemplare"),
        ("exhibition proof", "exhibition proof"), ("estate proof", "estate proof"), ("record proof", "record proof"), ("test print", "test print, test proof"), ("definitive proof", "definitive proof"),
        ("final proof", "final proof"), ("experimental proof", "experimental proof"), ("separation proof", "separation proof"), ("anthology proof", "anthology proof"), ("stage proof", "stage proof"),
        ("Tamarind impression", "Tamarind impression"), ("preview proof", "preview proof"), ("press proof", "press proof"), ("unique proof", "unique proof"), ("rough proof", "rough proof"), ("special proof", "special proof"),
    ];

    private static readonly FrozenDictionary<string, Phrase[]>.AlternateLookup<ReadOnlySpan<char>> ByFirst = Table
        .SelectMany(line => line.Words.Split(", ").Select(words => Phrase.Of(line.Series, words)))
        .GroupBy(phrase => phrase.Words[0], StringComparer.Ordinal)
        .ToFrozenDictionary(same => same.Key, same => same.OrderByDescending(phrase => phrase.Words.Length).ToArray(), StringComparer.Ordinal)
        .GetAlternateLookup<ReadOnlySpan<char>>();

    public static IEnumerable<string> FirstWords => ByFirst.Dictionary.Keys;

    /// <summary>The kind of proof whose words begin at a token, or null.</summary>
    public static SeriesMet? At(TokenText text, int at)
    {
        if (!ByFirst.TryGetValue(text.Word(at), out var phrases))
        {
            return null;
        }

        foreach (var phrase in phrases)
        {
            if (phrase.Matches(text, at, out var next, out var plural))
            {
                return new SeriesMet(phrase.Series, at, next) { IsPlural = plural };
            }
        }

        return null;
    }

    private sealed record Phrase(string Series, string[] Words, bool IsPlural)
    {
        public static Phrase Of(string series, string words)
        {
            TokenText cut = new(words.TrimStart('*'));

            return new Phrase(series, [.. Enumerable.Range(0, cut.Count).Select(at => cut.IsWord(at) ? cut.Word(at).ToString() : cut.Written(at).ToString())], words[0] == '*');
        }

        /// <summary>An apostrophe may be missing, a line may end between two words, and the last may have an s.</summary>
        public bool Matches(TokenText text, int at, out int next, out bool plural)
        {
            (next, plural) = (at, IsPlural);

            for (var i = 0; i < Words.Length; i++)
            {
                if (Words[i] == "'")
                {
                    next = text.IsSign(next, '\'') ? next + 1 : next;
                    continue;
                }

                next = i == 0 ? next : OverLineEnd(text, next);

                if (!text.IsWord(next, Words[i]) && !(i == Words.Length - 1 && !IsPlural && (plural = IsPluralOf(text.Word(next), Words[i]))))
                {
                    return false;
                }

                next++;
            }

            return true;
        }

        private static bool IsPluralOf(ReadOnlySpan<char> word, string of) => word.Length == of.Length + 1 && word[^1] == 's' && word[..^1].SequenceEqual(of);

        private static int OverLineEnd(TokenText text, int at) =>
            text.IsAnySign(at, "/|-") ? at + 1 : text.IsSign(at, '[') && text.IsWord(at + 1, "sic") && text.IsSign(at + 2, ']') ? at + 3 : at;
    }
}

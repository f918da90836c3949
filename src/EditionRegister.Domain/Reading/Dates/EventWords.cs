using EditionRegister.Domain.Reading.Text;

namespace EditionRegister.Domain.Reading.Dates;

/// <summary>What a word says has happened, and whether that made the image itself or came to it.</summary>
internal readonly record struct EventWord(string Shown, bool IsOfImage);

/// <summary>Words for what happened at a date, in one table: what is shown, and the words it is said with.</summary>
internal static class EventWords
{
    private static readonly HashSet<string> LaterWords = DateWords.Of("later spater dopo despues plus");
    private static readonly HashSet<string> Posthumous = DateWords.Of("posthumously posthumous posthume postumo postuma posthum");

    // In "after a drawing of 1732" the date is another thing's.
    private static readonly string[] OfAnother =
    [
        "original: original originals vorlage", "design: design entwurf", "negative: negative", "daguerreotype: daguerreotype ambrotype", "photograph: photograph photo foto photographie fotografia",
        "painting: painting watercolor watercolour gemalde tableau peinture dipinto pintura", "drawing: drawing zeichnung dessin disegno dibujo", "model: model",
        "engraving: engraving etching gravure kupferstich grabado incisione", "lithograph: lithograph", "woodcut: woodcut woodblock holzschnitt", "plate: plate", "bronze: bronze", "sculpture: sculpture marble",
    ];

    private static readonly string[] OfImage =
    [
        "negative: negative negatives negatif negativ negativo neg", "block: block blocks woodblock", "plate: plate plates planche platte lastra plancha matrix stone",
        "designed: designed design entworfen entwurf concu progettato disenado", "conceived: conceived conception", "modelled: modeled modelled",
        "drawn: drawn gezeichnet dessine disegnato dibujado", "sculpted: sculpted", "photographed: photographed shot exposed", "introduced: introduced", "project: project", "original: original",
    ];

    private static readonly string[] OfCopies =
    [
        "printed: printed print prints printing pulled impression imprime imprimee tirage tire gedruckt druck abzug stampato stampata stampa tiratura impreso impresa impresion",
        "reprinted: reprinted reprint restrike restruck reimprime retirage nachgedruckt nachdruck neudruck ristampato ristampa reimpreso",
        "published: published publication pub publ issued publie publiee erschienen veroffentlicht herausgegeben pubblicato pubblicata publicado publicada",
        "cast: cast recast gegossen guss", "struck: struck", "made: made executed", "manufactured: manufactured", "produced: produced", "fabricated: fabricated refabricated",
        "assembled: assembled", "fired: fired", "carved: carved", "engraved: engraved grave gravee gestochen inciso incisa", "etched: etched radiert", "painted: painted", "edition: edition auflage edizione edicion", "version: version",
        "copy: copy", "replica: replica", "copyright: copyright copyrighted", "patented: patent patented", "exhibited: exhibited", "annotated: annotated", "revised: revised", "reworked: reworked recut",
        "repainted: repainted", "remade: remade reconstruction reconstructed", "repaired: repaired", "restored: restored", "altered: altered", "enlarged: enlarged",
        "coloured: coloured colored handcoloured handcolored", "signed: signed signe signiert firmato firmado", "numbered: numbered",
    ];

    private static readonly Dictionary<string, EventWord> Table = Words();
    private static readonly Dictionary<string, EventWord> Others = Words(OfAnother, isOfImage: false);

    public static EventWord? At(TokenText text, int at) =>
        text.IsSign(at, '\u00A9') ? new EventWord("copyright", IsOfImage: false)
        : Table.GetAlternateLookup<ReadOnlySpan<char>>().TryGetValue(text.Word(at), out var word) ? word : null;

    /// <summary>The thing of another, such as an original, that stands there.</summary>
    public static string? AnotherThing(TokenText text, int at) => Others.GetAlternateLookup<ReadOnlySpan<char>>().TryGetValue(text.Word(at), out var thing) ? thing.Shown : null;

    /// <summary>Printed later, posthumous cast: when, where no date is said.</summary>
    public static string? When(TokenText text, int at)
    {
        for (var near = Math.Max(0, at - 1); near <= at + 2; near++)
        {
            if (near != at && text.Is(near, Posthumous))
            {
                return "posthumously";
            }

            if (near != at && text.Is(near, LaterWords))
            {
                return "later";
            }
        }

        return null;
    }

    private static Dictionary<string, EventWord> Words()
    {
        var words = Words(OfImage, isOfImage: true);

        foreach (var (word, said) in Words(OfCopies, isOfImage: false))
        {
            words.TryAdd(word, said);
        }

        return words;
    }

    private static Dictionary<string, EventWord> Words(string[] lines, bool isOfImage)
    {
        Dictionary<string, EventWord> words = new(StringComparer.Ordinal);

        foreach (var line in lines)
        {
            Add(words, line, isOfImage);
        }

        return words;
    }

    private static void Add(Dictionary<string, EventWord> words, string line, bool isOfImage)
    {
        var (shown, said) = (line[..line.IndexOf(':', StringComparison.Ordinal)], line[(line.IndexOf(':', StringComparison.Ordinal) + 1)..]);

        foreach (var word in said.Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            words.TryAdd(word, new EventWord(shown, isOfImage));
        }
    }
}

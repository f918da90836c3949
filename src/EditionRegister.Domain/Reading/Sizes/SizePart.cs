using EditionRegister.Domain.Reading.Text;

namespace EditionRegister.Domain.Reading.Sizes;

/// <summary>What of a print is measured. A closed list; what a text names beyond it is kept as written.</summary>
public sealed record SizePart
{
    private readonly string[] _writings;

    private SizePart(string word, params string[] writings) => (Word, _writings) = (word, [word, .. writings]);

    public static SizePart Image { get; } = new("image", "images", "composition", "printed area", "pictorial area", "bild", "bildgrose", "darstellung", "darst", "immagine", "composizione", "imagen", "composicion", "mancha");

    /// <summary>The plate, or the mark that it leaves: they are one size but for what the paper shrinks.</summary>
    public static SizePart Plate { get; } = new(
        "plate", "plates", "platemark", "platemarks", "plate mark", "plate line", "platte", "plattenrand", "plattengrose", "planche", "cuvette", "coup de planche", "lastra", "battuta", "impronta", "plancha", "huella");

    public static SizePart Block { get; } = new("block", "blocks", "woodblock", "printing block", "holzstock", "druckstock", "bloc", "taco");

    public static SizePart Stone { get; } = new("stone", "stein", "pierre", "pietra", "piedra");

    /// <summary>The paper that is printed on.</summary>
    public static SizePart Sheet { get; } = new("sheet", "sheets", "paper", "leaf", "primary support", "blatt", "bl", "blattgrose", "papier", "feuille", "feuillet", "foglio", "carta", "hoja", "papel", "pliego");

    /// <summary>What is printed on, where it is not said that it is paper.</summary>
    public static SizePart Support { get; } = new("support", "trager", "supporto", "soporte");

    /// <summary>What the sheet is laid down on.</summary>
    public static SizePart Mount { get; } = new("mount", "mounting", "secondary support", "support secondary", "board", "backing", "unterlage", "montage", "montierung");

    public static SizePart Mat { get; } = new("mat", "matt", "matte", "window mat", "passepartout", "passe partout");

    public static SizePart Frame { get; } = new("frame", "frames", "framed", "rahmen", "gerahmt", "rahmenmas", "cadre", "encadrement", "cornice", "marco");

    public static SizePart Overall { get; } = new("overall", "object", "gesamt", "hors tout", "complessivo", "total");

    /// <summary>What a mat or frame leaves to be seen.</summary>
    public static SizePart Sight { get; } = new("sight", "sichtmas", "lichtmas", "a vue");

    public static IReadOnlyList<SizePart> All { get; } = [Image, Plate, Block, Stone, Sheet, Support, Mount, Mat, Frame, Overall, Sight];

    // Folded: small letters without accents, ß as one s. By first word, the longest first; made after the parts it holds.
    private static readonly Dictionary<string, (string[] Words, SizePart Part)[]> ByFirst = (
        from part in All
        from writing in part._writings
        let words = writing.Split(' ')
        orderby words.Length descending
        group (words, part) by words[0]).ToDictionary(same => same.Key, same => same.ToArray(), StringComparer.Ordinal);

    public string Word { get; }

    public override string ToString() => Word;

    /// <summary>The part whose name begins at a token, or null.</summary>
    internal static SizePart? At(TokenText text, int at, out int next)
    {
        next = at;

        if (!text.IsWord(at) || !ByFirst.GetAlternateLookup<ReadOnlySpan<char>>().TryGetValue(text.Word(at), out var writings))
        {
            return null;
        }

        foreach (var (words, part) in writings)
        {
            if (Matches(text, at, words, out next))
            {
                return part;
            }
        }

        next = at;

        return null;
    }

    private static bool Matches(TokenText text, int at, string[] words, out int next)
    {
        next = at;

        for (var i = 0; i < words.Length; i++)
        {
            next = i > 0 && text.IsAnySign(next, "-,") ? next + 1 : next;

            if (!text.IsWord(next, words[i]))
            {
                return false;
            }

            next++;
        }

        return true;
    }
}

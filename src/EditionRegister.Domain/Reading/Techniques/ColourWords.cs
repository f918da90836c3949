using System.Collections.Frozen;
using EditionRegister.Domain.Reading.Text;

namespace EditionRegister.Domain.Reading.Techniques;

/// <summary>How many colours a text says, and whether it says colour at all: "in 4 colours", "two-color", "à trois couleurs", "vierfarbig".</summary>
internal static class ColourWords
{
    private const int Most = 99;

    private static readonly Dictionary<string, string> VariantOf = new(StringComparer.Ordinal) { ["woodcut"] = "colour-woodcut", ["lithograph"] = "colour-lithograph" };

    private static readonly List<string> GermanCounts = ["ein", "zwei", "drei", "vier", "funf", "sechs", "sieben", "acht", "neun", "zehn", "elf", "zwolf"];

    private static readonly FrozenDictionary<string, int>.AlternateLookup<ReadOnlySpan<char>> Compounds = OfOneWord();

    /// <summary>The technique that a technique is when it is printed in colour; null where the list has none of its own.</summary>
    public static Technique? Variant(Technique technique) => VariantOf.TryGetValue(technique.Word, out var word) ? Technique.Find(word) : null;

    /// <summary>Whether the word of a technique says colour itself.</summary>
    public static bool SaysColour(Technique technique) => technique.Word is "colour-woodcut" or "colour-lithograph" or "chromolithograph";

    /// <summary>A count of colours and the token after it, or null.</summary>
    public static (int Count, int Next)? Counted(TokenText text, int at)
    {
        if (Compounds.TryGetValue(text.Word(at), out var said))
        {
            return (said, at + 1);
        }

        if (Counts.At(text, at) is not { Value: <= Most } count)
        {
            return null;
        }

        var noun = text.IsSign(count.Next, '-') ? count.Next + 1 : count.Next;

        return IsPlural(text.Word(noun)) || IsSingular(text.Word(noun)) || IsNoun(text.Word(noun)) || text.Word(noun) is "tintas" or "tinta" or "tinte" ? (count.Value, noun + 1) : null;
    }

    /// <summary>German says colour within the word: Farblinolschnitt, Dreifarbenholzschnitt. The count if said, and where the technique begins.</summary>
    public static (int? Count, int From)? Within(ReadOnlySpan<char> word)
    {
        if (word.Length > 40 || word.IndexOf("farb") is not (>= 0 and var at))
        {
            return null;
        }

        var rest = word[(at + 4)..].StartsWith("en") ? at + 6 : at + 4;

        return at == 0 ? (null, rest) : GermanCounts.IndexOf(word[..at].ToString()) is >= 0 and var count ? (count + 1, rest) : null;
    }

    public static bool IsPlural(ReadOnlySpan<char> word) => word is "colors" or "colours" or "couleurs" or "colori" or "colores" or "farben";

    /// <summary>Nouns that say colour after "in" and after a count: "en couleur", "a colore".</summary>
    public static bool IsNoun(ReadOnlySpan<char> word) => word is "couleur" or "colore" or "farbe";

    public static bool IsSingular(ReadOnlySpan<char> word) =>
        word is "color" or "colour" or "colored" or "coloured"
            or "farbig" or "farbige" or "farbiger" or "farbiges" or "polychrome" or "polychrom"
            or "multicolor" or "multicolored" or "multicolour" or "multicoloured" or "mehrfarbig" or "mehrfarbige" or "mehrfarbiger" or "multicolore";

    /// <summary>Before a colour: "in color", "en couleurs", "a colori", "printed in colors", "in full colour".</summary>
    public static bool LeadsIn(ReadOnlySpan<char> word) => word is "in" or "en" or "a" or "printed" or "full" or "multi" or "several" or "various" or "many" or "plusieurs" or "mehreren" or "varios" or "vari";

    // vierfarbig, dreifarbiger, Zweifarbendruck; bicolore.
    private static FrozenDictionary<string, int>.AlternateLookup<ReadOnlySpan<char>> OfOneWord()
    {
        string[] endings = ["farbig", "farbige", "farbiger", "farbiges", "farbigen", "farbigem", "farbendruck", "farbdruck"];
        Dictionary<string, int> words = new(StringComparer.Ordinal) { ["bicolor"] = 2, ["bicolore"] = 2, ["bichrome"] = 2, ["tricolor"] = 3, ["tricolore"] = 3, ["trichrome"] = 3 };

        foreach (var (index, count) in GermanCounts.Index())
        {
            foreach (var ending in endings)
            {
                words.Add(count + ending, index + 1);
            }
        }

        return words.ToFrozenDictionary(StringComparer.Ordinal).GetAlternateLookup<ReadOnlySpan<char>>();
    }
}

using EditionRegister.Domain.Reading.Text;

namespace EditionRegister.Domain.Reading.Papers;

/// <summary>Words that belong to a paper's name wherever they stand: colours, surfaces and ways of making, in five languages.</summary>
internal static class PaperWords
{
    private static readonly HashSet<string> OfAName = new(StringComparer.Ordinal)
    {
        // Colours.
        "white", "off", "cream", "creme", "ivory", "natural", "buff", "tan", "grey", "gray", "black", "blue", "pink", "green", "brown", "antique", "soft", "bright", "warm", "radiant", "toned", "extra", "light", "dark", "pale",
        "weiss", "weis", "naturweiss", "naturweis", "elfenbein", "chamois", "blanc", "blanche", "ivoire", "naturel", "bianco", "avorio", "naturale", "blanco", "crema", "marfil",

        // Surfaces and ways of making.
        "hot", "cold", "pressed", "press", "hp", "cp", "not", "rough", "smooth", "satin", "satinato", "velvet", "textured", "fine", "grain", "medium", "matt", "matte", "laid", "wove", "handmade", "mouldmade", "moldmade", "machinemade",
        "hand", "made", "mould", "mold", "machine", "thin", "thick", "heavy", "heavyweight", "lightweight", "sized", "unsized", "internally", "externally", "surface", "acid", "free", "rag", "cotton", "linen", "hemp", "alpha", "cellulose", "wood", "percent",
        "handgeschopft", "rau", "glatt", "heisgepresst", "kaltgepresst", "torchon", "satine", "verge", "velin", "grana", "fina", "grossa", "vergata", "liscio", "and", "und", "et", "e", "y", "paper", "papers", "sheet", "sheets",
    };

    /// <summary>Whether tokens are nothing but such words, with figures of per cent.</summary>
    public static bool AreOfAName(TokenText text, IReadOnlyList<int> tokens)
    {
        var any = false;

        foreach (var at in tokens)
        {
            any |= text.IsWord(at);

            if (text.IsWord(at) ? !OfAName.GetAlternateLookup<ReadOnlySpan<char>>().Contains(text.Word(at)) : !text.IsAnySign(at, "-/&.%'") && !(text.IsDigits(at) && text.IsSign(at + 1, '%')))
            {
                return false;
            }
        }

        return any;
    }

    /// <summary>Words that joined something to what was taken out from beside them.</summary>
    public static bool IsConnecting(ReadOnlySpan<char> word) =>
        word is "with" or "and" or "in" or "of" or "at" or "a" or "an" or "on" or "from" or "the" or "weight" or "mit" or "und" or "zu" or "avec" or "et" or "de" or "con" or "e" or "y" or "di" or "da" or "aus" or "auf";

    /// <summary>Before the name of what is printed on.</summary>
    public static bool IsOn(ReadOnlySpan<char> word) => word is "on" or "auf" or "sur" or "su" or "sobre";
}

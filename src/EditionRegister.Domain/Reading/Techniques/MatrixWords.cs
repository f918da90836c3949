using System.Collections.Frozen;
using EditionRegister.Domain.Reading.Text;

namespace EditionRegister.Domain.Reading.Techniques;

/// <summary>"From three blocks", "23 blocks", "de trois planches": how many matrices a text says.</summary>
internal static class MatrixWords
{
    private const int Most = 99;

    private static readonly FrozenDictionary<string, string>.AlternateLookup<ReadOnlySpan<char>> Kinds = Of(
        ("block", "block blocks woodblock woodblocks stock stocke stocken druckstock druckstocke druckstocken holzstock holzstocke holzstocken taco tacos bois legno legni"),
        ("plate", "plate plates plaque plaques planche planches platte platten druckplatte druckplatten lastra lastre matrice matrici matrices matrix plancha planchas"),
        ("stone", "stone stones pierre pierres stein steine steinen pietra pietre piedra piedras"),
        ("screen", "screen screens ecran ecrans sieb siebe sieben telaio telai pantalla pantallas"));

    /// <summary>The count and the token after it, or null: "from three blocks", "two-plate". Plates said otherwise may be the pictures of a book.</summary>
    /// <param name="platesAlone">"Etching, two plates": plates between commas count.</param>
    public static (MatrixCount Count, int Next)? At(TokenText text, int at, bool platesAlone = false)
    {
        if (Counts.At(text, at) is not { Value: <= Most } count)
        {
            return null;
        }

        var noun = IsOfWhat(text.Word(count.Next)) || text.IsSign(count.Next, '-') ? count.Next + 1 : count.Next;
        var isSure = IsFrom(text.Word(at - 1)) || text.IsSign(count.Next, '-') || (platesAlone && !text.IsWord(at - 1) && !text.IsWord(noun + 1));

        return Kinds.TryGetValue(text.Word(noun), out var kind) && (kind != "plate" || isSure) ? (new MatrixCount(count.Value, kind), noun + 1) : null;
    }

    public static bool IsFrom(ReadOnlySpan<char> word) => word is "from" or "using" or "on" or "least" or "von" or "aus" or "auf" or "de" or "sur" or "da" or "su" or "desde";

    private static bool IsOfWhat(ReadOnlySpan<char> word) =>
        word is "separate" or "different" or "aluminum" or "aluminium" or "copper" or "zinc" or "steel" or "wood" or "cherry" or "lino" or "linoleum";

    private static FrozenDictionary<string, string>.AlternateLookup<ReadOnlySpan<char>> Of(params ReadOnlySpan<(string Kind, string Words)> kinds)
    {
        Dictionary<string, string> words = new(StringComparer.Ordinal);

        foreach (var (kind, list) in kinds)
        {
            foreach (var word in list.Split(' '))
            {
                words[word] = kind;
            }
        }

        return words.ToFrozenDictionary(StringComparer.Ordinal).GetAlternateLookup<ReadOnlySpan<char>>();
    }
}

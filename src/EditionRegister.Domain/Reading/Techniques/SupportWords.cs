using System.Collections.Frozen;
using EditionRegister.Domain.Reading.Text;

namespace EditionRegister.Domain.Reading.Techniques;

/// <summary>Where the words for what a work is printed on begin and end: "on cream laid paper", "auf Bütten", "Support: wove paper".</summary>
internal static class SupportWords
{
    private static readonly FrozenSet<string>.AlternateLookup<ReadOnlySpan<char>> Materials = (
        "paper papers papier papiers papiere carta carte papel papeles butten velin vellum parchment pergament japan japon board boards card cardboard cardstock karton carton cartone cartulina canvas leinwand silk seide newsprint tissue").Split(' ')
        .ToFrozenSet(StringComparer.Ordinal).GetAlternateLookup<ReadOnlySpan<char>>();

    public static bool IsPreposition(ReadOnlySpan<char> word) => word is "on" or "auf" or "sur" or "su" or "sobre" or "onto";

    /// <summary>"Mounted on a scroll" says nothing of what it is printed on.</summary>
    public static bool IsMounting(ReadOnlySpan<char> word) => word is "mounted" or "laid" or "tipped" or "pasted" or "glued" or "montiert" or "aufgezogen" or "monte" or "contrecolle" or "montato" or "montado";

    /// <summary>"Etching on copper" is printed from it.</summary>
    public static bool IsMetal(ReadOnlySpan<char> word) =>
        word is "copper" or "copperplate" or "zinc" or "steel" or "kupfer" or "zink" or "stahl" or "cuivre" or "acier" or "rame" or "zinco" or "acciaio" or "cobre" or "acero";

    public static bool IsMaterial(ReadOnlySpan<char> word) => Materials.Contains(word);

    /// <summary>"German Etching off-white wove paper": a material ends the words that follow.</summary>
    public static bool MaterialFollows(TokenText text, int at)
    {
        for (var i = at; i < at + 6 && (text.IsSign(i, '-') || (text.IsWord(i) && !IsPreposition(text.Word(i)) && text.Word(i) is not ("and" or "with" or "und" or "et"))); i++)
        {
            if (IsMaterial(text.Word(i)))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>"Support:", "Träger:", "Papier:" as a heading.</summary>
    public static bool IsHeading(TokenText text, int at) =>
        text.IsSign(at + 1, ':') && text.Word(at) is "support" or "trager" or "papier" or "paper" or "carta" or "papel" or "supporto" or "soporte" or "bildtrager";

    /// <summary>Words that no support goes on over: who printed it, and what is beside it.</summary>
    public static bool IsAnotherMatter(ReadOnlySpan<char> word) =>
        word is "in" or "with" or "mit" or "avec" or "con" or "printer" or "printers" or "printed" or "published" or "publisher" or "publishers" or "edition" or "ed" or "signed" or "numbered" or "verso" or "extra"
            or "gedruckt" or "imprime" or "imprimee" or "stampato" or "stampata" or "impreso" or "impresa";

    /// <summary>A comma between adjectives: "on heavy, wove paper".</summary>
    public static bool GoesOnOver(TokenText text, int from, int comma)
    {
        for (var at = from; at < comma; at++)
        {
            if (IsMaterial(text.Word(at)) || !text.IsWord(at))
            {
                return false;
            }
        }

        for (var at = comma + 1; at < comma + 4 && text.IsWord(at); at++)
        {
            if (IsMaterial(text.Word(at)))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>A full stop that ends a sentence, and not "J. Green" or "100 Lb.".</summary>
    public static bool EndsSentence(TokenText text, int at) => text.IsSign(at, '.') && !text.IsApart(at) && text.Written(at - 1).Length > 3 && text.IsWord(at - 1) && (at + 1 >= text.Count || text.IsApart(at + 1));
}

using EditionRegister.Domain.Reading.Inscriptions.Editions;
using EditionRegister.Domain.Reading.Text;

namespace EditionRegister.Domain.Reading.Inscriptions.Copies;

/// <summary>Words right before figures that say what they are: an edition's, or a page's, a file's, a dealer's.</summary>
internal static class Announcements
{
    /// <summary>Edition, ed., numbered, no., #, copy, before a fraction.</summary>
    /// <param name="text">The text.</param>
    /// <param name="at">Where the fraction begins.</param>
    /// <param name="word">The token of the word or sign that says so; the fraction's own where none does.</param>
    public static Before Of(TokenText text, int at, out int word)
    {
        word = at;

        if (at == 0)
        {
            return Before.Anything;
        }

        var before = text.IsAnySign(at - 1, ".:#,(°") ? at - 2 : at - 1;
        before = text.IsAnySign(before, ".:#°") ? before - 1 : before;
        var said = text.Word(before);

        if (EditionWords.IsOne(said) || EditionWords.IsNumberWord(said) || (said is "n" && before < at - 1))
        {
            word = EditionWords.IsNumberWord(said) && (EditionWords.IsOne(text.Word(before - 1)) || CountWords.IsNumberedCopy(text.Word(before - 1))) ? before - 1 : before;
        }
        else if (CountWords.IsNumberedCopy(text.Word(at - 1)) || text.IsAnySign(at - 1, "#№"))
        {
            word = at - 1;
        }

        // What a sheet is made by announces its number as well, and is not a part of it.
        return word < at || (text.IsAnySign(at - 1, ",;(") && IsTechnique(text.Word(at - 2))) ? Before.EditionWord : Before.Anything;
    }

    /// <summary>Whether the words before say that a page, a file, a measure or somebody else's number follows.</summary>
    public static bool IsOfSomethingElse(TokenText text, int at)
    {
        var before = text.IsAnySign(at - 1, ".:#)]\"°") ? at - 2 : at - 1;
        var word = text.Word(before);

        if (IsOther(word))
        {
            return true;
        }

        // Dealer's number, model no., inventory #, but edition number.
        var isNumber = EditionWords.IsNumberWord(word) || text.IsSign(at - 1, '#');
        var owner = EditionWords.IsNumberWord(word) ? before - 1 : before;
        owner = text.IsWord(owner, "s") && text.IsSign(owner - 1, '\'') ? owner - 2 : owner;

        return (isNumber && IsOwner(text.Word(owner))) || (word is "in" && (text.IsDigits(before - 1) || before < at - 1));
    }

    /// <summary>In the midst of a sentence, no. 3 of 11 is one of whatever it speaks of.</summary>
    public static bool BeginsALine(TokenText text, int at) => at <= 0 || text.IsAnySign(at - 1, "/|,;:(\".") || CountWords.IsCopy(text.Word(at - 1)) || EditionWords.IsOne(text.Word(at - 1));

    /// <summary>The word before a figure, over a dot or a number sign.</summary>
    public static int WordBefore(TokenText text, int at) => text.IsAnySign(at - 1, ".°#:") ? at - 2 : at - 1;

    /// <summary>11/12[each circled]: an object's number.</summary>
    public static bool IsCircled(TokenText text, int at) =>
        text.IsAnySign(at, "[(") && text.Word(text.IsWord(at + 1, "each") ? at + 2 : at + 1) is "circled" or "encircled";

    /// <summary>Etching, 5/78: behind what a sheet is made by, a copy's number is due.</summary>
    private static bool IsTechnique(ReadOnlySpan<char> word) => word is "print" or "etching" or "aquatint" or "drypoint" or "engraving" or "mezzotint" or "intaglio" or "lithograph" or "woodcut" or "linocut" or "screenprint" or "serigraph" or "silkscreen" or "monotype" or "photogravure" or "heliogravure"
        or "radierung" or "holzschnitt" or "linolschnitt" or "lithographie" or "siebdruck" or "gravure" or "serigraphie" or "acquaforte" or "litografia" or "xilografia" or "aguafuerte" or "serigrafia" or "grabado" or "paper";

    private static bool IsOther(ReadOnlySpan<char> word) => word is "scale" or "scales" or "echelle" or "masstab" or "massstab" or "page" or "pages" or "p" or "pp" or "seite" or "pagina" or "fol" or "folio" or "fig" or "file" or "acc" or "accession"
        or "inv" or "inventory" or "cat" or "lot" or "box" or "neg" or "negative" or "vol" or "volume" or "bd" or "cm" or "cms" or "mm" or "inch" or "inches" or "ft" or "feet" or "circle" or "circled" or "elevation" or "job" or "dwg" or "model" or "reg";

    private static bool IsOwner(ReadOnlySpan<char> word) =>
        word is "dealer" or "raised" or "serial" or "stock" or "design" or "room" or "order" or "pattern" or "catalog" or "catalogue" or "negative" or "phone" or "telephone" or "museum" or "collection" or "register" || IsOther(word);
}

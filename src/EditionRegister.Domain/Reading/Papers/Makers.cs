using EditionRegister.Domain.Reading.Text;

namespace EditionRegister.Domain.Reading.Papers;

/// <summary>Finds where a text says who made the paper: made by …, by …, maker: …, mill: …, von …, fabriqué par …. A bare name is never taken for a maker.</summary>
internal static class Makers
{
    /// <summary>The first token of the maker's name, or null where none is announced here.</summary>
    public static int? At(TokenText text, int at)
    {
        var start = Announced(text, at);

        return start is { } name && IsName(text, name) ? name : null;
    }

    private static int? Announced(TokenText text, int at)
    {
        var word = text.Word(at);

        return word is "maker" or "papermaker" or "mill" or "manufacturer" or "hersteller" or "muhle" or "papiermuhle" or "fabricant" or "moulin" or "fabbricante" or "cartiera" or "fabricante" or "molino" && text.IsSign(at + 1, ':') ? at + 2
            : word is "made" or "manufactured" or "produced" or "formed" && text.IsWord(at + 1, "by") && !(text.Word(at - 1) is "hand" or "mould" or "mold" or "machine" || text.IsSign(at - 1, '-')) ? at + 2
            : word is "by" && !IsOfAnother(text, at - 1) ? at + 1
            : word is "hergestellt" or "geschopft" && text.IsWord(at + 1, "von") ? at + 2
            : word is "von" && !text.IsWord(at + 1, "hand") ? at + 1
            : word is "fabrique" or "fait" && text.IsWord(at + 1, "par") ? at + 2
            : word is "fatto" or "prodotto" && text.IsWord(at + 1, "da") ? at + 2
            : word is "hecho" or "fabricado" && text.IsWord(at + 1, "por") ? at + 2
            : null;
    }

    // Printed by, mounted by, 22 by 30: somebody else, or no name at all. "Made by" is met before this.
    private static bool IsOfAnother(TokenText text, int at) =>
        !(text.Word(at) is "made" or "handmade" or "mouldmade" or "moldmade") && (text.IsDigits(at) || text.Word(at) is [.., 'e', 'd'] or [.., 'n', 't'] or "drawn" or "given" or "sewn" or "edition" or "design");

    /// <summary>It begins with a capital, or in a script that has none.</summary>
    private static bool IsName(TokenText text, int at) => text.Written(at) is [var first, ..] && text.IsWord(at) && char.IsLetter(first) && !char.IsLower(first);
}

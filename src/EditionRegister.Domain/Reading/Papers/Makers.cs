using EditionRegister.Domain.Reading.Sizes;
using EditionRegister.Domain.Reading.Text;

namespace EditionRegister.Domain.Reading.Papers;

/// <summary>Finds where a text says who made the paper: made by …, by …, maker: …, mill: …, von …, fabriqué par …. A bare name is never taken for a maker.</summary>
internal static class Makers
{
    /// <summary>The first token of the maker's name, or null where none is announced here.</summary>
    /// <param name="text">The text.</param>
    /// <param name="at">Where it would be announced.</param>
    /// <param name="floor">The token after what was read before; what stands before it says nothing of this.</param>
    public static int? At(TokenText text, int at, int floor)
    {
        var start = Announced(text, at, floor);

        return start is { } name && IsName(text, name) ? name : null;
    }

    private static int? Announced(TokenText text, int at, int floor)
    {
        var word = text.Word(at);

        return word is "maker" or "papermaker" or "mill" or "manufacturer" or "hersteller" or "muhle" or "papiermuhle" or "fabricant" or "moulin" or "fabbricante" or "cartiera" or "fabricante" or "molino" && text.IsSign(at + 1, ':') ? at + 2
            : word is "made" or "manufactured" or "produced" or "formed" && text.IsWord(at + 1, "by") && !(at > floor && (text.Word(at - 1) is "hand" or "mould" or "mold" or "machine" || text.IsSign(at - 1, '-'))) ? at + 2
            : word is "by" && !(at > floor && !Breaks.IsBefore(text, at) && IsOfAnother(text, at - 1)) ? at + 1
            : word is "hergestellt" or "geschopft" && text.IsWord(at + 1, "von") ? at + 2
            : word is "von" && !text.IsWord(at + 1, "hand") ? at + 1
            : word is "fabrique" or "fait" && text.IsWord(at + 1, "par") ? at + 2
            : word is "fatto" or "prodotto" && text.IsWord(at + 1, "da") ? at + 2
            : word is "hecho" or "fabricado" && text.IsWord(at + 1, "por") ? at + 2
            : null;
    }

    // Printed by, mounted by: somebody else. "Made by" is met before this.
    private static bool IsOfAnother(TokenText text, int at) =>
        !(text.Word(at) is "made" or "handmade" or "mouldmade" or "moldmade") && text.Word(at) is [.., 'e', 'd'] or [.., 'n', 't'] or "drawn" or "given" or "sewn" or "edition" or "design";

    /// <summary>It begins with a capital, or in a script that has none.</summary>
    private static bool IsName(TokenText text, int at) => text.Written(at) is [var first, ..] && text.IsWord(at) && char.IsLetter(first) && !char.IsLower(first);
}

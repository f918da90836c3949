using CsCheck;

namespace EditionRegister.Domain.Tests.Reading;

/// <summary>Texts nobody would write: the pieces that readers know, in any order, and characters of every kind between them.</summary>
internal static class AnyText
{
    private static readonly string[] Pieces =
    [
        "12", "3/4", "1,220", "1 220", "0", "30.5", "999999", "1234567", "½", "³", "⁄", "₈", " x ", "x", "×", " by ", " in", " in.", "in", " cm", "cm.", " mm", "m", "'", "\"", "″",
        "(", ")", ":", ";", ",", ".", "-", "/", " ", "  ", "\n", "⏎", "image", "sheet: ", "plate mark", "H", "W.", "h: ", "diam.", "Ø", "c. ", "irregular", "each", "and", "to",
        "kozo", "hosho", " made by ", "von ", "maker: ", "Mill", "g", " g/m²", "gsm", " lb", "#", "cover", "basis ", "deckle", "four ", "deckled edges", " on two sides", "Büttenrand",
        "barbes", "lot ", "batch", "A4", "B2", "imperial", "royal", "hot pressed", "NOT", "\uD800", "\uDFFF", "😀", "\u0000", "\u0307", "İ", "ß",
    ];

    public static Gen<string> Of { get; } = Gen.OneOf(
        Gen.Int[0, Pieces.Length - 1].Select(at => Pieces[at]),
        Gen.Int[0, Pieces.Length - 1].Select(at => Pieces[at]),
        Gen.Char.Select(c => c.ToString())).Array[0, 24].Select(string.Concat);
}

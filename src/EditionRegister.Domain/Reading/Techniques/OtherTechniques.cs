using static EditionRegister.Domain.Reading.Techniques.TechniqueFamily;

namespace EditionRegister.Domain.Reading.Techniques;

/// <summary>
/// Prints of no one family, and the bare word "print". A rubbing is none: it is drawn on the face of the sheet over what lies beneath,
/// and no ink passes from a matrix to paper (our decision).
/// </summary>
internal static class OtherTechniques
{
    public static IReadOnlyList<Technique> All { get; } =
    [
        Listed.As(Other, "embossing", "embossing", en: "embossed, embossment, embossed print, blind embossed, blind embossed print, blind embossing, blind embossment, blind printing, blind print, blind printed, inkless embossing, inkless intaglio, debossing, debossed", fr: "gaufrage, gaufré, gaufrée, impression à sec, estampage à sec", de: "Prägedruck, Blindprägung, Prägung, Blinddruck, Reliefprägung", it: "goffratura, stampa a secco, goffrature", es: "gofrado, estampación en seco, relieve en seco"),
        Listed.As(Other, "cliche-verre", "cliché-verre", en: "cliché verre", fr: "cliché sur verre", de: "Glasklischee, Glasklischeedruck", es: "clisé verre"),
        Listed.As(Other, "nature-print", "nature print", en: "nature printing, nature printed, leaf print, leaf printing, gyotaku, fish print", fr: "impression naturelle", de: "Naturselbstdruck, Naturdruck, Pflanzendruck, Blattdruck", it: "stampa naturale, fitotipia", es: "impresión natural, fitotipia"),
        Listed.As(Other, "print", "print", "300041273", en: "fine art print", fr: "estampe", de: "Druckgraphik, Druckgrafik, Originalgraphik, Originalgrafik", it: "stampa, stampe", es: "grabado, estampa"),
    ];
}

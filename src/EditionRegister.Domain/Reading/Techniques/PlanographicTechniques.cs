using static EditionRegister.Domain.Reading.Techniques.TechniqueFamily;

namespace EditionRegister.Domain.Reading.Techniques;

/// <summary>Printed from a flat surface. The words are common practice, no source; the ids are those of <see cref="Technique.Aat"/>.</summary>
internal static class PlanographicTechniques
{
    public static IReadOnlyList<Technique> All { get; } =
    [
        Listed.As(Planographic, "transfer-lithograph", "transfer lithograph", "300263141", en: "transfer lithography, transfer litho, autographic transfer lithograph", fr: "lithographie par report, lithographie sur papier report, autographie", de: "Umdrucklithographie, Umdrucklithografie, Autographie", it: "litografia a trasporto, autografia litografica", es: "litografía de transferencia"),
        Listed.As(Planographic, "offset-lithograph", "offset lithograph", "300192896", en: "offset lithography, offset lithographic, offset litho, off set lithograph, offset print, off set print, offset printing, offset printed, offset, off set, photo offset lithograph, photo offset lithography, photo offset print, photo offset, photolitho offset", fr: "lithographie offset, impression offset", de: "Offsetlithographie, Offsetlithografie, Offsetdruck, Offset", it: "litografia offset, stampa offset", es: "litografía offset, impresión offset"),
        Listed.As(Planographic, "photolithograph", "photolithograph", "300154386", en: "photo lithograph, photo litho, photolitho, photolithography, photo lithography, photolithographic", fr: "photolithographie", de: "Fotolithographie, Fotolithografie, Photolithographie", it: "fotolitografia, fotolitografie", es: "fotolitografía"),
        Listed.As(Planographic, "chromolithograph", "chromolithograph", en: "chromo lithograph, chromolithography, chromolithographic, chromolitho, oleograph", fr: "chromolithographie, oléographie", de: "Chromolithographie, Chromolithografie, Öldruck", it: "cromolitografia, cromolitografie, oleografia", es: "cromolitografía, oleografía"),
        Listed.As(Planographic, "colour-lithograph", "colour lithograph", "300041383", en: "color lithograph, color lithography, color litho, color lithographic, colour lithography, colour litho, colour lithographic", fr: "lithographie en couleurs, lithographie en couleur", de: "Farblithographie, Farblithografie", it: "litografia a colori, litografie a colori", es: "litografía a color, litografía en color, litografía en colores"),
        Listed.As(Planographic, "lithotint", "lithotint", en: "litho tint", fr: "lithographie au lavis", de: "Lithotinte"),
        Listed.As(Planographic, "waterless-lithograph", "waterless lithograph", en: "waterless lithography, waterless litho, waterless planograph", fr: "lithographie sans eau", de: "wasserlose Lithographie, wasserlose Lithografie", it: "litografia senza acqua", es: "litografía sin agua"),
        Listed.As(Planographic, "algraph", "algraph", en: "algraphy, aluminium plate lithograph, aluminum plate lithograph, aluminography", fr: "algraphie", de: "Algraphie, Algrafie", it: "algrafia, algrafie", es: "algrafía"),
        Listed.As(Planographic, "zincograph", "zincograph", en: "zincography, zinc lithograph, zinc plate lithograph, zincographic", fr: "zincographie", de: "Zinkographie, Zinkografie", it: "zincografia, zincografie", es: "cincografía, zincografía"),
        Listed.As(Planographic, "lithograph", "lithograph", "300041379", en: "lithograph print, lithography, litho, lithographed, lithographic, stone lithograph, stone lithography, plate lithograph, plate lithography, crayon lithograph", fr: "lithographie, litho", de: "Lithographie, Lithografie, Steindruck, Kreidelithographie, Kreidelithografie, Federlithographie, Federlithografie", it: "litografia, litografie", es: "litografía"),
        Listed.As(Planographic, "collotype", "collotype", en: "collo type", fr: "phototypie", de: "Lichtdruck", it: "fototipia, fototipie, eliotipia, collotipia", es: "fototipia, colotipia"),
        Listed.As(Planographic, "planographic-print", "planographic print", "300178376", en: "planograph, planographic, planography", de: "Flachdruck", it: "stampa in piano", es: "estampación planográfica"),
    ];
}

using static EditionRegister.Domain.Reading.Techniques.TechniqueFamily;

namespace EditionRegister.Domain.Reading.Techniques;

/// <summary>Printed from what lies below. The words are common practice, no source; the ids are those of <see cref="Technique.Aat"/>.</summary>
internal static class IntaglioTechniques
{
    public static IReadOnlyList<Technique> All { get; } =
    [
        .. Bitten, .. Cut, .. Others,
    ];

    private static IReadOnlyList<Technique> Bitten =>
    [
        Listed.As(Intaglio, "soft-ground-etching", "soft-ground etching", "300041376",
            en: "soft ground", fr: "vernis mou, eau-forte au vernis mou, gravure au vernis mou", de: "Weichgrundätzung, Vernis mou, Weichgrundradierung, Durchdrückverfahren",
            it: "vernice molle, ceramolle, cera molle, acquaforte a vernice molle, acquaforte a cera molle", es: "barniz blando, aguafuerte al barniz blando, grabado al barniz blando"),
        Listed.As(Intaglio, "hard-ground-etching", "hard-ground etching",
            en: "hard ground", fr: "vernis dur, eau-forte au vernis dur", de: "Hartgrundätzung, Hartgrundradierung", it: "vernice dura, acquaforte a vernice dura", es: "barniz duro, aguafuerte al barniz duro"),
        Listed.As(Intaglio, "lift-ground", "lift ground", "300053243", en: "lift-ground etching", de: "Aussprengverfahren, Aussprengtechnik"),
        Listed.As(Intaglio, "sugar-lift", "sugar lift", "300190346",
            en: "sugar lift etching, sugar-lift process, sugar bite, ~sugar",
            fr: "gravure au sucre, au sucre", de: "Zuckertusche, Zuckeraquatinta, Zuckertuschverfahren, Reservage", it: "maniera allo zucchero, maniera zucchero, allo zucchero", es: "lavado al azúcar, técnica del azúcar, al azúcar"),
        Listed.As(Intaglio, "spit-bite", "spit bite", en: "spit bite etching, spitbite", de: "Spuckätzung", it: "morsura a sputo", es: "al escupitajo"),
        Listed.As(Intaglio, "open-bite", "open bite", en: "open bite etching, deep bite, deep bite etching", fr: "morsure ouverte, morsure profonde, morsure à nu", de: "Tiefätzung, Offenätzung", it: "morsura aperta, morsura profonda", es: "mordida abierta, mordido abierto, mordida profunda"),
        Listed.As(Intaglio, "soap-ground", "soap ground", en: "soap ground etching, white ground etching", es: "barniz de jabón", it: "vernice al sapone"),
        Listed.As(Intaglio, "sandpaper-ground", "sandpaper ground", en: "sand paper ground, sand ground", de: "Sandpapiergrund"),
        Listed.As(Intaglio, "sulphur-tint", "sulphur tint", en: "sulfur tint, sulphur print", fr: "fleur de soufre", de: "Schwefelätzung"),
        Listed.As(Intaglio, "lavis", "lavis", fr: "gravure au lavis, manière de lavis", de: "Lavismanier, Pinselätzung"),
        Listed.As(Intaglio, "line-etching", "line etching", de: "Strichradierung, Linienätzung"),
        Listed.As(Intaglio, "photo-etching", "photo-etching", en: "photo etching, photographic etching", fr: "eau-forte photographique", de: "Fotoradierung, Photoradierung, Fotoätzung", it: "fotoincisione, fotoacquaforte", es: "fotograbado, fotoaguafuerte"),
        Listed.As(Intaglio, "etching", "etching", "300041365",
            en: "etched, zinc etching, copper etching, copperplate etching, copper plate etching, steel etching",
            fr: "eau-forte, eaux-fortes, eaux forte, gravure à l'eau-forte", de: "Radierung, Ätzradierung",
            it: "acquaforte, acqueforti, incisione all'acquaforte", es: "aguafuerte, grabado al aguafuerte, grabado a aguafuerte"),
        Listed.As(Intaglio, "aquatint", "aquatint", "300041366",
            en: "aquatinta", fr: "aquatinte, gravure à l'aquatinte", de: "Aquatinta, Aquatinten, Aquatintaradierung", it: "acquatinta, acquetinte, acquatinte", es: "aguatinta, aguatinta al grano, grabado a la aguatinta"),
    ];

    private static IReadOnlyList<Technique> Cut =>
    [
        Listed.As(Intaglio, "drypoint", "drypoint", "300041349",
            en: "dry point, drypoint etching, dry point etching, drypoint engraving", fr: "pointe sèche, pointes sèches, gravure à la pointe sèche", de: "Kaltnadel, Kaltnadelradierung, Kaltnadelarbeit",
            it: "puntasecca, puntesecche, punta secca, punte secche", es: "punta seca, grabado a la punta seca"),
        Listed.As(Intaglio, "mezzotint", "mezzotint", "300041356",
            en: "mezzotinto, mezzotint engraving", fr: "manière noire, gravure à la manière noire, mezzotinte", de: "Schabkunst, Schabkunstblatt, Schabblatt, Mezzotinto", it: "maniera nera, mezzatinta, mezzetinte, incisione a maniera nera", es: "mezzotinta, media tinta, manera negra, grabado al humo"),
        Listed.As(Intaglio, "line-engraving", "line engraving", "300041352", fr: "gravure au trait", de: "Linienstich", it: "incisione a tratto"),
        Listed.As(Intaglio, "stipple-engraving", "stipple engraving", en: "stipple, stippling, stipple etching", fr: "gravure au pointillé", de: "Punktstich, Punktierstich, Punktiermanier", it: "incisione a punti, granito", es: "grabado a puntos, grabado de puntos"),
        Listed.As(Intaglio, "crayon-manner", "crayon manner", en: "crayon manner engraving, crayon manner etching, chalk manner", fr: "manière de crayon, gravure en manière de crayon", de: "Crayonmanier, Kreidemanier", it: "maniera a matita", es: "manera de lápiz"),
        Listed.As(Intaglio, "roulette", "roulette", en: "roulette work", de: "Roulettearbeit", it: "rotella", es: "ruleta"),
        Listed.As(Intaglio, "engraving", "engraving", "300041340",
            en: "engraved, burin, burin engraving, steel engraving, copper engraving, copperplate engraving, copper plate engraving, gravure", fr: "gravure, gravure au burin, gravure sur cuivre, gravure sur acier",
            de: "Kupferstich, Stahlstich, Stich, Grabstichelarbeit", it: "bulino, incisione a bulino, incisioni a bulino, incisione su rame, incisione, incisioni", es: "buril, grabado a buril, grabado al buril, grabado en cobre, talla dulce"),
    ];

    private static IReadOnlyList<Technique> Others =>
    [
        Listed.As(Intaglio, "photogravure", "photogravure", "300154382", en: "photo gravure, heliogravure", fr: "héliogravure", de: "Heliogravüre, Photogravüre, Photogravure, Fotogravure", it: "fotogravure, eliogravure, fotocalcografia", es: "heliograbado, huecograbado fotográfico"),
        Listed.As(Intaglio, "rotogravure", "rotogravure", fr: "rotogravure", de: "Rotationstiefdruck", it: "rotocalco", es: "rotograbado, huecograbado"),
        Listed.As(Intaglio, "photopolymer-print", "photopolymer print",
            en: "photopolymer, photo polymer, photopolymer etching, photopolymer gravure, photopolymer photogravure, photopolymer plate, polymer gravure, polymer photogravure, polymer plate, solar plate, solar plate etching, solar plate intaglio, solar plate print, solar etching",
            fr: "photopolymère, gravure sur photopolymère", de: "Fotopolymer, Photopolymer, Polymergravüre, Fotopolymerradierung", it: "fotopolimero, incisione su fotopolimero", es: "fotopolímero, grabado en fotopolímero"),
        Listed.As(Intaglio, "carborundum-print", "carborundum print", en: "carborundum, carborundum etching, carborundum aquatint, carborundum mezzotint, carborundum tint, carborundum collagraph, carborundum relief",
            fr: "gravure au carborundum", de: "Carborundumdruck, Carborundumradierung, Karborundum", it: "incisione al carborundum", es: "grabado al carborundo, carborundo"),
        Listed.As(Intaglio, "collagraph", "collagraph", "300041339", en: "collograph, collagraphy, collagraph print, collagraphic print, cardboard print", fr: "collagraphie, collographie", de: "Collagraphie, Collagrafie, Kollagrafie, Collografie, Materialdruck", it: "collagrafia, collagrafie, collografia", es: "colografía, collagrafía, colagrafía"),
        Listed.As(Intaglio, "viscosity-print", "viscosity print", en: "viscosity etching, viscosity printing, viscosity, simultaneous colour printing, simultaneous color printing", fr: "gravure en viscosité, viscosité", de: "Viskositätsdruck", it: "stampa a viscosità", es: "grabado en viscosidad, viscosidad"),
        Listed.As(Intaglio, "intaglio-print", "intaglio print", "300041338", en: "intaglio, intaglio printing, intaglio printed, mixed intaglio", fr: "taille-douce, tailles-douces, gravure en taille-douce, gravure en creux", de: "Tiefdruck", it: "calcografia, calcografie, stampa calcografica, incisione in cavo", es: "grabado calcográfico, calcografía, grabado en hueco"),
    ];
}

using static EditionRegister.Domain.Reading.Techniques.TechniqueFamily;

namespace EditionRegister.Domain.Reading.Techniques;

/// <summary>What is done beside the printing. The words are common practice, no source; the ids are those of <see cref="Technique.Aat"/>.</summary>
internal static class BesideTechniques
{
    public static IReadOnlyList<Technique> All { get; } =
    [
        Listed.As(Beside, "chine-colle", "chine collé", en: "chine colle, chine appliqué, chine collee", it: "fondino"),
        Listed.As(Beside, "hand-colouring", "hand-colouring", "300133555",
            en: "~hand coloring, ~hand colouring, ~hand colored, ~hand coloured, ~hand tinted, ~hand tinting, ~hand painting, ~hand painted, ~colored by hand, ~coloured by hand, ~applied watercolor, ~applied watercolour, ~applied color, ~applied colour, ~hand finished, ~hand finishing",
            fr: "~colorié à la main, ~coloriée à la main, ~rehaussé à la main, ~rehaussée à la main, ~aquarellé à la main, ~aquarellée à la main, ~colorié main", de: "~handkoloriert, ~handcoloriert, ~handkolorierte, ~handkolorierter, ~von Hand koloriert, ~Handkolorierung, ~altkoloriert",
            it: "~colorato a mano, ~colorata a mano, ~acquerellato a mano, ~acquerellata a mano, ~coloritura a mano", es: "~coloreado a mano, ~coloreada a mano, ~iluminado a mano, ~iluminada a mano"),
        Listed.As(Beside, "a-la-poupee", "à la poupée", en: "inked à la poupée, printed à la poupée, poupée"),
        Listed.As(Beside, "surface-roll", "surface roll", en: "surface rolled, surface rolling, rolled surface colour, rolled surface color, ~relief roll, blended roll, rainbow roll, split fountain", fr: "encrage en irisé, irisé", de: "Irisdruck, Walzenauftrag", es: "rodillo en superficie"),
    ];
}

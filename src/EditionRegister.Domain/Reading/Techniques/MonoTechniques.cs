using static EditionRegister.Domain.Reading.Techniques.TechniqueFamily;

namespace EditionRegister.Domain.Reading.Techniques;

/// <summary>Printed once. The words are common practice, no source; the ids are those of <see cref="Technique.Aat"/>.</summary>
internal static class MonoTechniques
{
    public static IReadOnlyList<Technique> All { get; } =
    [
        Listed.As(Mono, "monotype", "monotype", "300041538", en: "mono type, monotype print", fr: "monotype", de: "Monotypie", it: "monotipo, monotipi, monotipia", es: "monotipo, monotipia"),
        Listed.As(Mono, "trace-monotype", "trace monotype", en: "traced monotype, trace monoprint, transfer monotype, monotype transfer drawing", fr: "monotype par report", de: "Durchdruckmonotypie, Durchdruckzeichnung"),
        Listed.As(Mono, "monoprint", "monoprint", en: "mono print, monoprinting", de: "Monoprint"),
        Listed.As(Mono, "ghost-print", "ghost print", en: "ghost impression, ghost monotype, ghost monoprint", de: "Geisterdruck"),
        Listed.As(Mono, "gelatin-plate-print", "gelatin plate print", en: "gelatine plate print, gelatin plate monotype, gelatin plate monoprint, gelatin monotype, gelatin monoprint, gelatin plate, gel plate print, gel plate monoprint, gel plate, gel print", fr: "monotype sur gélatine, impression sur plaque de gélatine", de: "Gelatinedruck, Gelplattendruck", it: "stampa su gelatina", es: "estampación con gelatina"),
    ];
}

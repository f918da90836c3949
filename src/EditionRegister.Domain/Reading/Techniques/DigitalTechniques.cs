using static EditionRegister.Domain.Reading.Techniques.TechniqueFamily;

namespace EditionRegister.Domain.Reading.Techniques;

/// <summary>Printed by a machine from a file. "Giclée" is a word of the trade for an inkjet print and no technique of its own.</summary>
internal static class DigitalTechniques
{
    public static IReadOnlyList<Technique> All { get; } =
    [
        Listed.As(Digital, "inkjet-print", "inkjet print", "300265621", en: "ink jet print, inkjet, ink jet, inkjet printed, giclée, giclee print, pigment print, archival pigment print, archival inkjet print, archival ink jet print, iris print", fr: "impression jet d'encre, jet d'encre, impression pigmentaire, tirage pigmentaire", de: "Tintenstrahldruck, Pigmentdruck, Inkjetdruck", it: "stampa a getto d'inchiostro, stampa inkjet", es: "impresión por inyección de tinta, impresión giclée, inyección de tinta"),
        Listed.As(Digital, "digital-print", "digital print", "300312222", en: "digital printing, digitally printed, laser print, color laser print, colour laser print, computer print", fr: "impression numérique, estampe numérique, impression laser", de: "Digitaldruck, Laserdruck, Computerdruck", it: "stampa digitale, stampe digitali", es: "impresión digital, estampa digital"),
    ];
}

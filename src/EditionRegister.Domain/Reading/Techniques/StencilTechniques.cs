using static EditionRegister.Domain.Reading.Techniques.TechniqueFamily;

namespace EditionRegister.Domain.Reading.Techniques;

/// <summary>Printed through openings. The words are common practice, no source; the ids are those of <see cref="Technique.Aat"/>.</summary>
internal static class StencilTechniques
{
    public static IReadOnlyList<Technique> All { get; } =
    [
        Listed.As(Stencil, "photo-screenprint", "photo-screenprint", "300265560", en: "photo screenprint, photo screen print, photoscreen print, photo silkscreen, photo serigraph, photographic screenprint, photographic silkscreen", fr: "sérigraphie photographique", de: "Fotosiebdruck, Photosiebdruck, Fotoserigrafie", it: "fotoserigrafia, fotoserigrafie", es: "fotoserigrafía"),
        Listed.As(Stencil, "screenprint", "screenprint", "300178688", en: "screen print, screen printing, screen printed, silkscreen, silk screen, silkscreen print, silk screen print, silkscreen printed, silkscreened, silk screened, serigraph, serigraphy, serigraph print", fr: "sérigraphie", de: "Siebdruck, Serigraphie, Serigrafie, Farbserigraphie", it: "serigrafia, serigrafie", es: "serigrafía"),
        Listed.As(Stencil, "pochoir", "pochoir", "300053436", en: "pochoir print", fr: "impression au pochoir, coloris au pochoir, au pochoir", de: "Pochoirdruck"),
        Listed.As(Stencil, "stencil", "stencil print", "300053433", en: "stencil, stenciling, stencilling, stenciled, stencilled, stencil printing", de: "Schablonendruck, Schablone", it: "stampino, mascherina", es: "estarcido"),
        Listed.As(Stencil, "risograph", "risograph", en: "risograph print, riso print, riso, risography, risoprint", fr: "risographie", de: "Risographie, Risografie, Risodruck", it: "risografia, stampa risograph", es: "risografía"),
        Listed.As(Stencil, "mimeograph", "mimeograph", en: "mimeograph print, mimeography, stencil duplicator print, mimeographed", fr: "ronéotypie", de: "Mimeographie, Wachsmatrizendruck", it: "ciclostile", es: "mimeografía"),
    ];
}

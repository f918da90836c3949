namespace EditionRegister.Domain.Documents;

/// <summary>What one label says: for folder, sleeve, mat or backing, never for the sheet itself.</summary>
/// <param name="Lines">Readable lines, the most telling first (pencilled number and title, maker, technique and year).</param>
/// <param name="Code">The register code as shown; always in readable text.</param>
/// <param name="Link">What the QR code holds; null prints no QR code.</param>
public sealed record Label(IReadOnlyList<string> Lines, string Code, string? Link);

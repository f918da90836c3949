using EditionRegister.Domain.Reading.Text;

namespace EditionRegister.Domain.Reading.Papers;

/// <summary>
/// Reads words for a paper: "Japanese kozo, 70 g/m²", "cotton rag 140 lb (22 x 30 in), four deckles, lot 12". Weight, edges, sheet, maker and
/// lot are taken where they are written; all else is the name, or is left.
/// </summary>
public static class PaperReader
{
    public static ReadPaper Read(string? text) => string.IsNullOrWhiteSpace(text) ? new ReadPaper() : new PaperScan(new TokenText(text)).Run();
}

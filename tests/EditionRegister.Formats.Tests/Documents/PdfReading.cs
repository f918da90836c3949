using System.Text;
using EditionRegister.Domain.Documents;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Content;
using UglyToad.PdfPig.DocumentLayoutAnalysis.TextExtractor;

namespace EditionRegister.Formats.Tests.Documents;

/// <summary>A PDF as another library reads it, in millimetres from the top left corner.</summary>
internal static class PdfReading
{
    private const double Millimetres = 25.4 / 72;

    public static T Read<T>(byte[] pdf, Func<PdfDocument, T> read)
    {
        using var document = PdfDocument.Open(pdf);
        return read(document);
    }

    /// <summary>The words of each page, parted by single spaces, ligatures undone (this reader does not look at ActualText).</summary>
    public static IReadOnlyList<string> Texts(byte[] pdf) =>
        Read(pdf, document => document.GetPages().Select(page => Plain(ContentOrderTextExtractor.GetText(page))).ToList());

    public static string Plain(string text) =>
        string.Join(' ', text.Normalize(NormalizationForm.FormKC).Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));

    /// <summary>Every visible letter with its box.</summary>
    public static IReadOnlyList<(string Letter, Box Box)> Letters(byte[] pdf, int page) => Read(pdf, document =>
    {
        var read = document.GetPage(page);
        return read.Letters.Where(letter => !string.IsNullOrWhiteSpace(letter.Value)).Select(letter => (Plain(letter.Value), BoxOf(letter, read))).ToList();
    });

    public static (double Width, double Height) Size(byte[] pdf, int page) =>
        Read(pdf, document => (document.GetPage(page).Width * Millimetres, document.GetPage(page).Height * Millimetres));

    public static bool Holds(this Box outer, Box inner, double tolerance = 0.01) =>
        inner.X >= outer.X - tolerance
        && inner.Y >= outer.Y - tolerance
        && inner.X + inner.Width <= outer.X + outer.Width + tolerance
        && inner.Y + inner.Height <= outer.Y + outer.Height + tolerance;

    private static Box BoxOf(Letter letter, Page page)
    {
        var glyph = letter.BoundingBox;
        return new(glyph.Left * Millimetres, (page.Height - glyph.Top) * Millimetres, glyph.Width * Millimetres, glyph.Height * Millimetres);
    }
}

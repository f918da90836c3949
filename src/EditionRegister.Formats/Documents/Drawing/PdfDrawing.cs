using EditionRegister.Formats.Documents.Layout;
using SkiaSharp;

namespace EditionRegister.Formats.Documents.Drawing;

/// <summary>Draws pages that are decided to the last millimetre as a PDF, built to PDF/A-2b.</summary>
internal static class PdfDrawing
{
    private const float PointsPerMillimetre = 72f / 25.4f;

    public static void Draw(Stream stream, IReadOnlyList<PageLayout> pages, Typesetter type, PdfIdentity identity)
    {
        using MemoryStream drawn = new();
        using SubsetFonts fonts = new(pages.SelectMany(page => page.Texts).Select(text => Shape(text, type)));

        using (var document = SKDocument.CreatePdf(drawn, Metadata(identity)))
        {
            foreach (var page in pages)
            {
                var canvas = document.BeginPage((float)page.Width * PointsPerMillimetre, (float)page.Height * PointsPerMillimetre);
                canvas.Scale(PointsPerMillimetre);
                DrawPage(canvas, page, type, fonts);
                document.EndPage();
            }

            document.Close();
        }

        stream.Write(PdfPatch.Apply(drawn.ToArray(), identity.Language));
    }

    private static void DrawPage(SKCanvas canvas, PageLayout page, Typesetter type, SubsetFonts fonts)
    {
        foreach (var rule in page.Hairlines)
        {
            using var paint = Paint(rule.Ink);
            canvas.DrawRect((float)rule.X, (float)(rule.Y - (rule.Thickness / 2)), (float)rule.Width, (float)rule.Thickness, paint);
        }

        foreach (var mark in page.QrMarks)
        {
            DrawQr(canvas, mark);
        }

        foreach (var text in page.Texts)
        {
            DrawText(canvas, text, Shape(text, type), fonts);
        }
    }

    // Text blobs that carry the text itself: a reader then finds the words whatever the shaping made of them.
    private static void DrawText(SKCanvas canvas, TextPiece text, ShapedText shaped, SubsetFonts fonts)
    {
        using var paint = Paint(text.Ink);
        var size = text.Size * Typesetter.Point;

        foreach (var run in shaped.Runs.Where(run => run.Glyphs.Length > 0))
        {
            using var font = fonts.Of(run.Font, (float)size);
            using SKTextBlobBuilder builder = new();
            var buffer = builder.AllocatePositionedTextRun(font, run.Glyphs.Length, run.Utf8.Length, null);
            buffer.SetGlyphs(run.Glyphs);
            buffer.SetText(run.Utf8);
            buffer.SetClusters(run.Clusters);
            buffer.SetPositions([.. run.X.Zip(run.Y, (x, y) => new SKPoint((float)(x * size), (float)(y * size)))]);

            using var blob = builder.Build();
            canvas.DrawText(blob, (float)text.X, (float)text.Baseline, paint);
        }
    }

    // One path for the whole code: one shape to fill, no seams between modules, a small file.
    private static void DrawQr(SKCanvas canvas, QrMark mark)
    {
        var module = mark.Box.Width / mark.Matrix.ModulesWithQuiet;
        using SKPathBuilder builder = new();

        foreach (var dark in mark.Matrix.DarkRectangles())
        {
            builder.AddRect(SKRect.Create(
                (float)(mark.Box.X + (dark.X * module)),
                (float)(mark.Box.Y + (dark.Y * module)),
                (float)(dark.Width * module),
                (float)(dark.Height * module)));
        }

        using var path = builder.Detach();
        using var paint = Paint(Ink.Black);
        canvas.DrawPath(path, paint);
    }

    private static ShapedText Shape(TextPiece text, Typesetter type) => type.Shape(text.Words, text.Face, text.Tracking / text.Size);

    private static SKPaint Paint(Ink ink) => new()
    {
        IsAntialias = true,
        Color = ink switch
        {
            Ink.Grey => new SKColor(0x5A, 0x5A, 0x5A),
            Ink.Pale => new SKColor(0xA8, 0xA8, 0xA8),
            _ => SKColors.Black,
        },
    };

    private static SKDocumentPdfMetadata Metadata(PdfIdentity identity) => new()
    {
        Title = identity.Title,
        Creator = "Edition register",
        Producer = "Edition register",
        Creation = identity.Created,
        Modified = identity.Created,
        RasterDpi = SKDocumentPdfMetadata.DefaultRasterDpi,
        EncodingQuality = SKDocumentPdfMetadata.DefaultEncodingQuality,
        PdfA = true,
    };
}

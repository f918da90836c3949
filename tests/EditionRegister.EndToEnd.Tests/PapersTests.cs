using System.Text;
using SkiaSharp;
using UglyToad.PdfPig;
using ZXing;
using ZXing.Common;

namespace EditionRegister.EndToEnd.Tests;

/// <summary>The demo's papers, as another PDF reader and another QR decoder see them.</summary>
public sealed class PapersTests : IDisposable
{
    private readonly RealProgram _edreg = new();

    public void Dispose() => _edreg.Dispose();

    [Fact]
    public void The_certificate_says_what_the_register_says_and_its_code_is_read_from_the_page()
    {
        Assert.SkipUnless(Tools.Has("pdftoppm"), "pdftoppm draws the page");
        _edreg.Do("demo", "--to", "demo");
        var file = Directory.GetFiles(_edreg.In("demo"), "certificate-RT4F*.pdf").Single();

        using var document = PdfDocument.Open(file);
        var text = string.Join(' ', document.GetPages().SelectMany(page => page.GetWords()).Select(word => word.Text)).Normalize(NormalizationForm.FormKC);
        Tools.Run("pdftoppm", "-r", "200", "-png", "-singlefile", file, _edreg.In("page"));

        Assert.Contains("Harbour at Low Water", text, StringComparison.Ordinal);
        Assert.Contains("3/12", text, StringComparison.Ordinal);
        Assert.Contains("limited to 12 impressions", text, StringComparison.Ordinal);
        Assert.Contains("block cut away in printing", text, StringComparison.Ordinal);
        Assert.Contains("RT4F-6MMV", text, StringComparison.Ordinal);
        Assert.Equal("https://saltmarsh.example/p/RT4F6MMV", Decode(_edreg.In("page.png")));
    }

    private static string Decode(string png)
    {
        using var bitmap = SKBitmap.Decode(png);
        var pixels = new byte[bitmap.Width * bitmap.Height * 4];
        using (var rgba = bitmap.Copy(SKColorType.Rgba8888))
        {
            rgba.Bytes.CopyTo(pixels, 0);
        }

        RGBLuminanceSource source = new(pixels, bitmap.Width, bitmap.Height, RGBLuminanceSource.BitmapFormat.RGBA32);

        return new MultiFormatReader().decode(new BinaryBitmap(new HybridBinarizer(source))).Text;
    }
}

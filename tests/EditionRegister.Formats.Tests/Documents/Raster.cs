using System.Globalization;
using System.Text;
using ZXing;
using ZXing.Common;
using EditionRegister.Domain.Documents;

namespace EditionRegister.Formats.Tests.Documents;

/// <summary>A page as printed by poppler, in greys, in which another program's decoder looks for codes.</summary>
internal sealed class Raster
{
    private readonly double _dotsPerMillimetre;
    private readonly byte[] _pixels;

    private Raster(int width, int height, byte[] pixels, double dpi) =>
        (Width, Height, _pixels, _dotsPerMillimetre) = (width, height, pixels, dpi / 25.4);

    public int Width { get; }

    public int Height { get; }

    public static Raster OfPage(byte[] pdf, int page, int dpi = 200)
    {
        using TempFolder folder = new();
        var file = Path.Combine(folder.Path, "page.pdf");
        File.WriteAllBytes(file, pdf);
        var (number, resolution) = (page.ToString(CultureInfo.InvariantCulture), dpi.ToString(CultureInfo.InvariantCulture));
        return Pgm(Tool.Run("pdftoppm", "-gray", "-r", resolution, "-f", number, "-l", number, file), dpi);
    }

    /// <summary>What the one QR code in the box says, or null.</summary>
    public string? Read(Box box)
    {
        var (left, top) = (Math.Max(0, Dots(box.X)), Math.Max(0, Dots(box.Y)));
        var (width, height) = (Math.Min(Dots(box.Width), Width - left), Math.Min(Dots(box.Height), Height - top));
        var cut = new byte[width * height];

        for (var row = 0; row < height; row++)
        {
            Array.Copy(_pixels, ((top + row) * Width) + left, cut, row * width, width);
        }

        RGBLuminanceSource source = new(cut, width, height, RGBLuminanceSource.BitmapFormat.Gray8);
        DecodingOptions options = new() { PossibleFormats = [BarcodeFormat.QR_CODE], TryHarder = true };
        return new BarcodeReaderGeneric { Options = options }.Decode(source)?.Text;
    }

    private int Dots(double millimetres) => (int)Math.Floor(millimetres * _dotsPerMillimetre);

    private static Raster Pgm(byte[] pgm, double dpi)
    {
        List<string> header = [];
        var at = 0;

        while (header.Count < 4)
        {
            var end = Array.FindIndex(pgm, at, b => b is (byte)' ' or (byte)'\n');
            header.Add(Encoding.ASCII.GetString(pgm, at, end - at));
            at = end + 1;
        }

        Assert.Equal("P5", header[0]);
        return new(int.Parse(header[1], CultureInfo.InvariantCulture), int.Parse(header[2], CultureInfo.InvariantCulture), pgm[at..], dpi);
    }
}

using SkiaSharp;

namespace EditionRegister.Formats.Pictures;

/// <summary>
/// A picture made anew for others to see: turned as it was taken, in sRGB, no longer than asked, on white where it was transparent, and with nothing of
/// what camera, phone or program wrote into the file beside the pixels: neither place nor time, neither names nor a small copy.
/// </summary>
public static class PublicPicture
{
    private const int Quality = 90;

    /// <summary>Writes a JPEG.</summary>
    /// <param name="stream">Where to.</param>
    /// <param name="original">The bytes as kept.</param>
    /// <param name="fileName">For what is refused.</param>
    /// <param name="longestSide">Pixels; a smaller picture keeps its size.</param>
    /// <exception cref="Domain.RefusedException">picture-not-read or picture-not-drawn.</exception>
    public static void Write(Stream stream, byte[] original, string fileName, int longestSide)
    {
        ArgumentNullException.ThrowIfNull(stream);
        using var data = SKData.CreateCopy(original);
        using var codec = SKCodec.Create(data) ?? throw PictureFileRefusals.NotRead(fileName);
        using var unpacked = Unpack(codec, longestSide) ?? throw PictureFileRefusals.NotDrawn(fileName);
        using var upright = Upright(unpacked, codec.EncodedOrigin, Math.Min(1f, longestSide / (float)Math.Max(codec.Info.Width, codec.Info.Height)), codec.Info);
        using var jpeg = upright.Encode(SKEncodedImageFormat.Jpeg, Quality);
        jpeg.SaveTo(stream);
    }

    /// <summary>As small as the decoder can while it is still as long as asked.</summary>
    private static SKBitmap? Unpack(SKCodec codec, int longestSide)
    {
        var scale = Math.Min(1f, longestSide / (float)Math.Max(codec.Info.Width, codec.Info.Height));
        var size = codec.GetScaledDimensions(scale);

        if (Math.Max(size.Width, size.Height) < Math.Min(longestSide, Math.Max(codec.Info.Width, codec.Info.Height)))
        {
            size = codec.GetScaledDimensions(Math.Min(1f, scale + 0.125f));
        }

        SKBitmap pixels = new();

        if (pixels.TryAllocPixels(new SKImageInfo(size.Width, size.Height, SKColorType.Rgba8888, SKAlphaType.Premul, SKColorSpace.CreateSrgb()))
            && codec.GetPixels(pixels.Info, pixels.GetPixels()) == SKCodecResult.Success)
        {
            return pixels;
        }

        pixels.Dispose();

        return null;
    }

    private static SKImage Upright(SKBitmap picture, SKEncodedOrigin origin, float scale, SKImageInfo whole)
    {
        var (width, height) = (Side(whole.Width, scale), Side(whole.Height, scale));
        var turned = IsOnItsSide(origin) ? new SKImageInfo(height, width) : new SKImageInfo(width, height);
        using var surface = SKSurface.Create(turned.WithColorType(SKColorType.Rgba8888).WithAlphaType(SKAlphaType.Opaque).WithColorSpace(SKColorSpace.CreateSrgb()));
        var canvas = surface.Canvas;
        canvas.Clear(SKColors.White);
        canvas.Concat(Turning(origin, width, height));
        using var image = SKImage.FromBitmap(picture);
        canvas.DrawImage(image, new SKRect(0, 0, width, height), new SKSamplingOptions(SKFilterMode.Linear, SKMipmapMode.Linear));

        return surface.Snapshot();
    }

    private static int Side(int pixels, float scale) => Math.Max(1, (int)MathF.Round(pixels * scale));

    private static bool IsOnItsSide(SKEncodedOrigin origin) =>
        origin is SKEncodedOrigin.LeftTop or SKEncodedOrigin.RightTop or SKEncodedOrigin.RightBottom or SKEncodedOrigin.LeftBottom;

    /// <summary>From the pixels as stored to the picture as seen, by the eight values of Orientation (Exif 2.32, 4.6.4.A).</summary>
    private static SKMatrix Turning(SKEncodedOrigin origin, float width, float height) => origin switch
    {
        SKEncodedOrigin.TopRight => new SKMatrix(-1, 0, width, 0, 1, 0, 0, 0, 1),
        SKEncodedOrigin.BottomRight => new SKMatrix(-1, 0, width, 0, -1, height, 0, 0, 1),
        SKEncodedOrigin.BottomLeft => new SKMatrix(1, 0, 0, 0, -1, height, 0, 0, 1),
        SKEncodedOrigin.LeftTop => new SKMatrix(0, 1, 0, 1, 0, 0, 0, 0, 1),
        SKEncodedOrigin.RightTop => new SKMatrix(0, -1, height, 1, 0, 0, 0, 0, 1),
        SKEncodedOrigin.RightBottom => new SKMatrix(0, -1, height, -1, 0, width, 0, 0, 1),
        SKEncodedOrigin.LeftBottom => new SKMatrix(0, 1, 0, -1, 0, width, 0, 0, 1),
        _ => SKMatrix.Identity,
    };
}

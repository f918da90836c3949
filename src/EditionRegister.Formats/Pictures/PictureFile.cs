using SkiaSharp;

namespace EditionRegister.Formats.Pictures;

/// <summary>Reads what a picture file is. Its header says how large it is before anything is unpacked, so a small file cannot unpack into all memory.</summary>
public static class PictureFile
{
    /// <summary>The largest file that is taken in.</summary>
    public const long MostBytes = 100_000_000;

    /// <summary>The most pixels that are taken in.</summary>
    public const long MostPixels = 200_000_000;

    // Up to here a picture that cannot be unpacked smaller is unpacked whole to see that all of it is there: 160 MB of memory.
    private const long UnpackedWhole = 40_000_000;

    /// <exception cref="Domain.RefusedException">picture-not-read, picture-too-many-pixels or picture-cut-short.</exception>
    public static PictureRead Read(byte[] bytes, string fileName)
    {
        ArgumentNullException.ThrowIfNull(bytes);

        using var data = SKData.CreateCopy(bytes);
        using var codec = SKCodec.Create(data);

        if (codec is null || MediaOf(codec.EncodedFormat) is not { } media)
        {
            throw PictureFileRefusals.NotRead(fileName);
        }

        var (width, height) = (codec.Info.Width, codec.Info.Height);

        if ((long)width * height > MostPixels)
        {
            throw PictureFileRefusals.TooManyPixels(fileName, width, height);
        }

        return PictureShape.IsWhole(bytes, media) && Unpacks(codec)
            ? new PictureRead(media, width, height)
            : throw PictureFileRefusals.CutShort(fileName);
    }

    private static string? MediaOf(SKEncodedImageFormat format) => format switch
    {
        SKEncodedImageFormat.Jpeg => "image/jpeg",
        SKEncodedImageFormat.Png => "image/png",
        SKEncodedImageFormat.Webp => "image/webp",
        _ => null,
    };

    /// <summary>A header may promise what the rest of the file does not keep.</summary>
    private static bool Unpacks(SKCodec codec)
    {
        var size = codec.GetScaledDimensions(0.125f);

        if ((long)size.Width * size.Height > UnpackedWhole)
        {
            return true;
        }

        using SKBitmap pixels = new();

        return pixels.TryAllocPixels(new SKImageInfo(size.Width, size.Height, SKColorType.Rgba8888, SKAlphaType.Premul))
            && codec.GetPixels(pixels.Info, pixels.GetPixels()) == SKCodecResult.Success;
    }
}

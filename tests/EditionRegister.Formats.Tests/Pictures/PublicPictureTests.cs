using System.Text;
using EditionRegister.Domain;
using EditionRegister.Formats.Pictures;
using SkiaSharp;

namespace EditionRegister.Formats.Tests.Pictures;

public sealed class PublicPictureTests
{
    [Fact]
    public void Nothing_that_the_camera_wrote_beside_the_pixels_is_left()
    {
        var original = CameraJpeg.Of(400, 300, orientation: 6);
        Assert.Equal(["Exif", "http://ns.adobe.com/xap/1.0/", "Photoshop 3.0"], JpegSegments.Of(original).Where(one => one.Name.Length > 0 && one.Name is not ("JFIF" or "ICC_PROFILE")).Select(one => one.Name));

        var published = Publish(original, 1_600);

        var segments = JpegSegments.Of(published);
        Assert.DoesNotContain(segments, one => one.Marker is 0xE1 or 0xED or 0xFE);
        Assert.All(segments.Where(one => one.Marker is >= 0xE0 and <= 0xEF), one => Assert.Contains(one.Name, new[] { "JFIF", "ICC_PROFILE" }));
        Assert.DoesNotContain(CameraJpeg.Secret, Encoding.Latin1.GetString(published), StringComparison.Ordinal);
        Assert.DoesNotContain("Exif", Encoding.Latin1.GetString(published), StringComparison.Ordinal);
    }

    // What is at the top left once the picture stands upright, by the table of Orientation in Exif 2.32, 4.6.4.A. As stored the left half is red; 4:3 lies on its side from 5 on.
    [Theory]
    [InlineData(1, 400, 300, "red left")]
    [InlineData(2, 400, 300, "red right")]
    [InlineData(3, 400, 300, "red right")]
    [InlineData(4, 400, 300, "red left")]
    [InlineData(5, 300, 400, "red top")]
    [InlineData(6, 300, 400, "red top")]
    [InlineData(7, 300, 400, "red bottom")]
    [InlineData(8, 300, 400, "red bottom")]
    public void It_stands_as_it_was_taken(int orientation, int width, int height, string looks)
    {
        using var seen = SKBitmap.Decode(Publish(CameraJpeg.Of(400, 300, (ushort)orientation), 1_600));

        Assert.Equal((width, height), (seen.Width, seen.Height));
        Assert.Equal(looks, Looks(seen));
    }

    // 400 by 300 at most 100 long: 100 by 75; a smaller one keeps its size.
    [Theory]
    [InlineData(100, 100, 75)]
    [InlineData(399, 399, 299)]
    [InlineData(5_000, 400, 300)]
    [InlineData(1, 1, 1)]
    public void Its_longest_side_is_no_longer_than_asked(int longest, int width, int height)
    {
        using var seen = SKBitmap.Decode(Publish(CameraJpeg.Of(400, 300, orientation: 1), longest));

        Assert.Equal((width, height), (seen.Width, seen.Height));
    }

    [Fact]
    public void What_was_transparent_is_white()
    {
        using SKBitmap clear = new(new SKImageInfo(8, 8, SKColorType.Rgba8888, SKAlphaType.Premul));
        clear.Erase(SKColors.Transparent);
        using var png = clear.Encode(SKEncodedImageFormat.Png, 100);

        using var seen = SKBitmap.Decode(Publish(png.ToArray(), 100));

        Assert.InRange(seen.GetPixel(4, 4).Green, 250, 255);
    }

    [Fact]
    public void What_cannot_be_unpacked_is_refused()
    {
        var cut = CameraJpeg.Of(400, 300, orientation: 1);

        Assert.Equal("picture-not-read", Assert.Throws<RefusedException>(() => Publish("no picture"u8.ToArray(), 100)).Name);
        Assert.Equal("picture-not-drawn", Assert.Throws<RefusedException>(() => Publish(cut[..^400], 1_600)).Name);
    }

    private static byte[] Publish(byte[] original, int longest)
    {
        using MemoryStream stream = new();
        PublicPicture.Write(stream, original, "front.jpg", longest);

        return stream.ToArray();
    }

    private static string Looks(SKBitmap seen)
    {
        bool IsRed(int x, int y) => seen.GetPixel(x, y) is { Red: > 150, Blue: < 100 };
        var (left, right, top, bottom) = (IsRed(10, seen.Height / 2), IsRed(seen.Width - 10, seen.Height / 2), IsRed(seen.Width / 2, 10), IsRed(seen.Width / 2, seen.Height - 10));

        return left && !right ? "red left" : right && !left ? "red right" : top && !bottom ? "red top" : bottom && !top ? "red bottom" : "neither";
    }
}

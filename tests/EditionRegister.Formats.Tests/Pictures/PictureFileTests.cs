using EditionRegister.Domain;
using EditionRegister.Formats.Pictures;
using SkiaSharp;

namespace EditionRegister.Formats.Tests.Pictures;

public sealed class PictureFileTests
{
    [Fact]
    public void A_picture_is_what_its_bytes_say()
    {
        Assert.Equal(new PictureRead("image/png", 40, 30), PictureFile.Read(PlainPng.Of(40, 30, 128), "front.jpg"));
        Assert.Equal(new PictureRead("image/jpeg", 400, 300), PictureFile.Read(CameraJpeg.Of(400, 300, orientation: 6), "front.png"));
        Assert.Equal(new PictureRead("image/webp", 8, 6), PictureFile.Read(Encoded(SKEncodedImageFormat.Webp), "front"));
    }

    [Theory]
    [InlineData("")]
    [InlineData("hello")]
    [InlineData("%PDF-1.7")]
    [InlineData("<svg xmlns='http://www.w3.org/2000/svg'/>")]
    [InlineData("GIF89a\u0001\u0000\u0001\u0000\u0000\u0000\u0000;")]
    [InlineData("BM\u001a\u0000\u0000\u0000")]
    public void Anything_else_is_refused_whatever_it_is_called(string content)
    {
        var refused = Assert.Throws<RefusedException>(() => PictureFile.Read(System.Text.Encoding.Latin1.GetBytes(content), "front.jpg"));

        Assert.Equal("picture-not-read", refused.Name);
    }

    [Fact]
    public void A_file_that_was_cut_short_anywhere_is_refused()
    {
        foreach (var whole in new[] { PlainPng.Of(40, 30, 128), CameraJpeg.Of(400, 300, orientation: 6), Encoded(SKEncodedImageFormat.Webp) })
        {
            for (var left = 1; left < whole.Length; left += Math.Max(1, whole.Length / 60))
            {
                var cut = Record.Exception(() => PictureFile.Read(whole[..left], "front"));

                Assert.Contains(Assert.IsType<RefusedException>(cut).Name, new[] { "picture-not-read", "picture-cut-short" });
            }
        }
    }

    // 14,143 squared is 200,024,449: just over the most. 20 thousand squared in fewer than a hundred bytes would unpack to 1.6 gigabytes.
    [Theory]
    [InlineData(14_143, 14_143)]
    [InlineData(20_000, 20_000)]
    [InlineData(2_000_000, 200)]
    public void Too_many_pixels_are_refused_before_anything_is_unpacked(int width, int height)
    {
        var before = GC.GetTotalAllocatedBytes(precise: true);

        var refused = Assert.Throws<RefusedException>(() => PictureFile.Read(PlainPng.Claiming(width, height), "bomb.png"));

        Assert.Contains(refused.Name, new[] { "picture-too-many-pixels", "picture-not-read" });
        Assert.InRange(GC.GetTotalAllocatedBytes(precise: true) - before, 0, 1_000_000);
    }

    [Fact]
    public void A_header_that_promises_more_than_there_is_is_refused() =>
        Assert.Equal("picture-cut-short", Assert.Throws<RefusedException>(() => PictureFile.Read(PlainPng.Claiming(400, 300), "thin.png")).Name);

    [Fact]
    public void The_figures_are_said()
    {
        var refused = Assert.Throws<RefusedException>(() => PictureFile.Read(PlainPng.Claiming(20_000, 20_000), "bomb.png"));

        Assert.Equal("bomb.png is 20000 by 20000 pixels; a picture may have 200 million. Nothing was changed. Save it smaller and add that.", refused.Message);
    }

    private static byte[] Encoded(SKEncodedImageFormat format)
    {
        using SKBitmap bitmap = new(8, 6);
        bitmap.Erase(SKColors.Teal);
        using var data = bitmap.Encode(format, 90);

        return data.ToArray();
    }
}

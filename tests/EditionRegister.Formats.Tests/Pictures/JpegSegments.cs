using System.Buffers.Binary;
using System.Text;

namespace EditionRegister.Formats.Tests.Pictures;

/// <summary>Walks the segments of a JPEG from SOI to EOI, as ITU-T T.81 annex B has them, without any decoder: an independent look at what is in a file.</summary>
internal static class JpegSegments
{
    /// <summary>Every segment's marker with the name its content begins with, where it is an APPn; scans are passed over.</summary>
    public static List<(byte Marker, string Name)> Of(byte[] jpeg)
    {
        List<(byte, string)> found = [];
        Assert.Equal([0xFF, 0xD8], jpeg[..2]);
        var at = 2;

        while (true)
        {
            Assert.Equal(0xFF, jpeg[at]);
            var marker = jpeg[at + 1];

            if (marker == 0xD9)
            {
                Assert.Equal(jpeg.Length, at + 2);

                return found;
            }

            var length = BinaryPrimitives.ReadUInt16BigEndian(jpeg.AsSpan(at + 2));
            var content = jpeg.AsSpan(at + 4, length - 2);
            var name = content.IndexOf((byte)0);
            found.Add((marker, marker is >= 0xE0 and <= 0xEF && name > 0 ? Encoding.ASCII.GetString(content[..name]) : ""));
            at += 2 + length;
            at = marker == 0xDA ? BehindTheScan(jpeg, at) : at;
        }
    }

    /// <summary>Within a scan 0xFF is followed by 0 or by a restart marker; anything else ends it.</summary>
    private static int BehindTheScan(byte[] jpeg, int at)
    {
        while (!(jpeg[at] == 0xFF && jpeg[at + 1] is not (0x00 or (>= 0xD0 and <= 0xD7))))
        {
            at++;
        }

        return at;
    }
}

using System.Buffers.Binary;
using System.Text;
using SkiaSharp;

namespace EditionRegister.Formats.Tests.Pictures;

/// <summary>
/// A JPEG as a phone writes it: beside the pixels an Exif segment with orientation, camera and GPS (Exif 2.32, 4.5 and 4.6), an XMP segment (XMP part 3, 1.1.3),
/// Photoshop's segment with IPTC, and a comment, each put in by hand behind SOI.
/// </summary>
internal static class CameraJpeg
{
    public const string Secret = "Elsie at 54.1 north";

    /// <summary>The left half red, the right half blue, as stored.</summary>
    public static byte[] Of(int width, int height, ushort orientation)
    {
        using SKBitmap bitmap = new(width, height);

        using (SKCanvas canvas = new(bitmap))
        {
            canvas.Clear(SKColors.Blue);
            using SKPaint red = new() { Color = SKColors.Red };
            canvas.DrawRect(0, 0, width / 2, height, red);
        }

        using var plain = bitmap.Encode(SKEncodedImageFormat.Jpeg, 95);
        var bytes = plain.ToArray();

        return
        [
            .. bytes[..2],
            .. Segment(0xE1, [.. "Exif\0\0"u8, .. Tiff(orientation)]),
            .. Segment(0xE1, [.. "http://ns.adobe.com/xap/1.0/\0"u8, .. Encoding.ASCII.GetBytes($"<x:xmpmeta xmlns:x='adobe:ns:meta/'>{Secret}</x:xmpmeta>")]),
            .. Segment(0xED, [.. "Photoshop 3.0\0"u8, .. Encoding.ASCII.GetBytes(Secret)]),
            .. Segment(0xFE, Encoding.ASCII.GetBytes(Secret)),
            .. bytes[2..],
        ];
    }

    private static byte[] Segment(byte marker, byte[] content)
    {
        var segment = new byte[content.Length + 4];
        (segment[0], segment[1]) = (0xFF, marker);
        BinaryPrimitives.WriteUInt16BigEndian(segment.AsSpan(2), (ushort)(content.Length + 2));
        content.CopyTo(segment, 4);

        return segment;
    }

    /// <summary>Little-endian TIFF: one directory with Orientation (0x0112), Model (0x0110) and a pointer (0x8825) to a GPS directory with the latitude's reference.</summary>
    private static byte[] Tiff(ushort orientation)
    {
        List<byte> tiff = [.. "II"u8, 42, 0, 8, 0, 0, 0];
        var model = Encoding.ASCII.GetBytes(Secret + "\0");
        var directoryEnd = 8 + 2 + (3 * 12) + 4;
        tiff.AddRange([3, 0]);
        tiff.AddRange(Entry(0x0110, type: 2, (uint)model.Length, (uint)directoryEnd));
        tiff.AddRange(Entry(0x0112, type: 3, 1, orientation));
        tiff.AddRange(Entry(0x8825, type: 4, 1, (uint)(directoryEnd + model.Length)));
        tiff.AddRange([0, 0, 0, 0]);
        tiff.AddRange(model);
        tiff.AddRange([1, 0, .. Entry(0x0001, type: 2, 2, 'N'), 0, 0, 0, 0]);

        return [.. tiff];
    }

    private static byte[] Entry(ushort tag, ushort type, uint count, uint value)
    {
        var entry = new byte[12];
        BinaryPrimitives.WriteUInt16LittleEndian(entry, tag);
        BinaryPrimitives.WriteUInt16LittleEndian(entry.AsSpan(2), type);
        BinaryPrimitives.WriteUInt32LittleEndian(entry.AsSpan(4), count);
        BinaryPrimitives.WriteUInt32LittleEndian(entry.AsSpan(8), value);

        return entry;
    }
}

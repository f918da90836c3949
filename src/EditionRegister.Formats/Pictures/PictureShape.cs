using System.Buffers.Binary;

namespace EditionRegister.Formats.Pictures;

/// <summary>
/// Whether a file goes on to the end its format demands: the EOI marker of JPEG (ITU-T T.81 B.1.1), the IEND chunk of PNG (ISO/IEC 15948 11.2.5), the length
/// a RIFF header gives (RFC 9649 2.4). Decoders fill up with grey what a file that was cut short does not hold.
/// </summary>
internal static class PictureShape
{
    public static bool IsWhole(ReadOnlySpan<byte> bytes, string media) => media switch
    {
        "image/jpeg" => bytes.LastIndexOf([(byte)0xFF, (byte)0xD9]) > 0,
        "image/png" => EndsAsPng(bytes),
        _ => bytes.Length >= 12 && BinaryPrimitives.ReadUInt32LittleEndian(bytes[4..]) + 8L <= bytes.Length,
    };

    private static bool EndsAsPng(ReadOnlySpan<byte> bytes)
    {
        var at = 8L;

        while (at + 12 <= bytes.Length)
        {
            var chunk = bytes[(int)at..];
            var length = BinaryPrimitives.ReadUInt32BigEndian(chunk);

            if (chunk[4..8].SequenceEqual("IEND"u8))
            {
                return true;
            }

            at += length + 12L;
        }

        return false;
    }
}

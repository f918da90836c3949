using System.Buffers.Binary;
using System.IO.Compression;

namespace EditionRegister.Tests;

/// <summary>A grey picture as PNG, put together chunk by chunk as ISO/IEC 15948 has it (signature 5.2, chunks 5.3, CRC 5.5, IHDR 11.2.2), so that tests need no other program to make one.</summary>
internal static class PlainPng
{
    private static readonly byte[] Signature = [0x89, 0x50, 0x4E, 0x47, 0x0D, 0x0A, 0x1A, 0x0A];

    /// <param name="width">Pixels.</param>
    /// <param name="height">Pixels.</param>
    /// <param name="shade">0 black to 255 white; another shade, other bytes.</param>
    public static byte[] Of(int width, int height, byte shade) => [.. Signature, .. Header(width, height), .. Chunk("IDAT"u8, Pixels(width, height, shade)), .. Chunk("IEND"u8, [])];

    /// <summary>A few bytes that say they are a picture of any size, and hold a single pixel.</summary>
    public static byte[] Claiming(int width, int height) => [.. Signature, .. Header(width, height), .. Chunk("IDAT"u8, Pixels(1, 1, 0)), .. Chunk("IEND"u8, [])];

    private static byte[] Header(int width, int height)
    {
        var header = new byte[13];
        BinaryPrimitives.WriteInt32BigEndian(header, width);
        BinaryPrimitives.WriteInt32BigEndian(header.AsSpan(4), height);
        header[8] = 8;

        return Chunk("IHDR"u8, header);
    }

    private static byte[] Pixels(int width, int height, byte shade)
    {
        using MemoryStream packed = new();

        using (ZLibStream zlib = new(packed, CompressionLevel.Fastest, leaveOpen: true))
        {
            byte[] line = [0, .. Enumerable.Repeat(shade, width)];

            for (var y = 0; y < height; y++)
            {
                zlib.Write(line);
            }
        }

        return packed.ToArray();
    }

    private static byte[] Chunk(ReadOnlySpan<byte> kind, ReadOnlySpan<byte> data)
    {
        byte[] named = [.. kind, .. data];
        var chunk = new byte[named.Length + 8];
        BinaryPrimitives.WriteInt32BigEndian(chunk, data.Length);
        named.CopyTo(chunk, 4);
        BinaryPrimitives.WriteUInt32BigEndian(chunk.AsSpan(named.Length + 4), Crc(named));

        return chunk;
    }

    private static uint Crc(byte[] bytes)
    {
        var crc = uint.MaxValue;

        foreach (var one in bytes)
        {
            crc ^= one;

            for (var bit = 0; bit < 8; bit++)
            {
                crc = (crc & 1) == 1 ? 0xEDB88320 ^ (crc >> 1) : crc >> 1;
            }
        }

        return ~crc;
    }
}

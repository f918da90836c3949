using System.Buffers;
using System.Text;
using System.Text.Unicode;
using EditionRegister.Domain;

namespace EditionRegister.Formats.Csv;

/// <summary>The bytes of a CSV file before anything is read of them: UTF-8 and nothing else.</summary>
internal static class CsvBytes
{
    /// <summary>The same bytes without a byte order mark.</summary>
    /// <exception cref="RefusedException">The bytes are not UTF-8 text.</exception>
    public static ReadOnlyMemory<byte> CheckedText(byte[] content, string fileName)
    {
        ReadOnlySpan<byte> all = content;

        if (all.StartsWith<byte>([0xFF, 0xFE]) || all.StartsWith<byte>([0xFE, 0xFF]))
        {
            throw CsvRefusals.Utf16(fileName);
        }

        if (!Utf8.IsValid(all))
        {
            var bad = FirstBad(all);
            throw CsvRefusals.NotUtf8(fileName, LineOf(all, bad), content[bad]);
        }

        if (all.IndexOf((byte)0) is var nul and >= 0)
        {
            throw CsvRefusals.Nul(fileName, LineOf(all, nul));
        }

        return content.AsMemory(all.StartsWith<byte>([0xEF, 0xBB, 0xBF]) ? 3 : 0);
    }

    /// <summary>The physical line, from 1, that holds the byte at <paramref name="index"/>; CRLF, LF and CR each end a line.</summary>
    public static int LineOf(ReadOnlySpan<byte> bytes, int index)
    {
        var line = 1;

        for (var i = 0; i < index; i++)
        {
            var endsLine = bytes[i] == '\n' || (bytes[i] == '\r' && (i + 1 == bytes.Length || bytes[i + 1] != '\n'));
            line += endsLine ? 1 : 0;
        }

        return line;
    }

    private static int FirstBad(ReadOnlySpan<byte> bytes)
    {
        var index = 0;

        while (index < bytes.Length)
        {
            if (Rune.DecodeFromUtf8(bytes[index..], out _, out var used) != OperationStatus.Done)
            {
                return index;
            }

            index += used;
        }

        return -1;
    }
}

using System.Buffers;
using System.Text.Unicode;

namespace EditionRegister.Store.Proof;

/// <summary>Writes a JSON string with the few escapes RFC 8785 (3.2.2.2) allows, and UTF-8 as it is for the rest.</summary>
internal static class CanonicalText
{
    private static readonly SearchValues<char> Escaped =
        SearchValues.Create([.. Enumerable.Range(0, 0x20).Select(code => (char)code), '"', '\\']);

    /// <exception cref="ArgumentException">Half of a surrogate pair stands alone: it has no UTF-8 form.</exception>
    public static void Write(ReadOnlySpan<char> text, IBufferWriter<byte> output)
    {
        output.Write("\""u8);

        for (var next = text.IndexOfAny(Escaped); next >= 0; next = text.IndexOfAny(Escaped))
        {
            Plain(text[..next], output);
            Escape(text[next], output);
            text = text[(next + 1)..];
        }

        Plain(text, output);
        output.Write("\""u8);
    }

    private static void Plain(ReadOnlySpan<char> text, IBufferWriter<byte> output)
    {
        var room = output.GetSpan((text.Length * 3) + 1);

        if (Utf8.FromUtf16(text, room, out _, out var written, replaceInvalidSequences: false) != OperationStatus.Done)
        {
            throw new ArgumentException("A text holds half of a surrogate pair, which is no character and has no UTF-8 form.");
        }

        output.Advance(written);
    }

    private static void Escape(char character, IBufferWriter<byte> output)
    {
        switch (character)
        {
            case '"': output.Write("\\\""u8); break;
            case '\\': output.Write("\\\\"u8); break;
            case '\b': output.Write("\\b"u8); break;
            case '\t': output.Write("\\t"u8); break;
            case '\n': output.Write("\\n"u8); break;
            case '\f': output.Write("\\f"u8); break;
            case '\r': output.Write("\\r"u8); break;
            default: output.Write([.. "\\u00"u8, Hex(character >> 4), Hex(character & 15)]); break;
        }
    }

    private static byte Hex(int digit) => "0123456789abcdef"u8[digit];
}

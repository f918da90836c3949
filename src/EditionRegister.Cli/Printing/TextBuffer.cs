using System.Buffers;
using System.Text;

namespace EditionRegister.Cli;

/// <summary>Passes UTF-8 on to a text writer as it comes, so that a long JSON document is never held whole.</summary>
internal sealed class TextBuffer(TextWriter output) : IBufferWriter<byte>
{
    private readonly Decoder _decoder = Encoding.UTF8.GetDecoder();
    private byte[] _bytes = new byte[4096];
    private char[] _characters = new char[4096];

    public void Advance(int count)
    {
        // A decoder keeps the first bytes of a character that is cut in two.
        var length = _decoder.GetChars(_bytes, 0, count, _characters, 0, flush: false);
        output.Write(_characters, 0, length);
    }

    public Memory<byte> GetMemory(int sizeHint = 0)
    {
        if (sizeHint > _bytes.Length)
        {
            _bytes = new byte[sizeHint];
            _characters = new char[sizeHint + 1];
        }

        return _bytes;
    }

    public Span<byte> GetSpan(int sizeHint = 0) => GetMemory(sizeHint).Span;
}

using System.Buffers;
using System.Buffers.Text;

namespace EditionRegister.Store.Proof;

/// <summary>
/// Writes a document straight in RFC 8785 form. It does not sort: names are given in UTF-16 order.
/// Narrower than JSON: integers within ±(2^53−1), no U+0000, no half of a surrogate pair.
/// </summary>
public sealed class CanonicalWriter
{
    /// <summary>2^53−1: beyond it a double, and so a JSON reader, may take two integers for one.</summary>
    public const long LargestInteger = 9_007_199_254_740_991;

    private readonly ArrayBufferWriter<byte> _output = new(512);
    private readonly CanonicalNesting _nesting = new();

    /// <summary>The document so far; whole once everything opened is closed.</summary>
    public ReadOnlySpan<byte> WrittenSpan => _output.WrittenSpan;

    /// <exception cref="InvalidOperationException">Something is still open, or nothing was written.</exception>
    public byte[] ToArray()
    {
        _nesting.EnsureWhole();

        return _output.WrittenSpan.ToArray();
    }

    /// <summary>Forgets the document and keeps the memory, for the next one.</summary>
    public void Clear()
    {
        _output.ResetWrittenCount();
        _nesting.Clear();
    }

    public void StartObject()
    {
        Before();
        _output.Write("{"u8);
        _nesting.Open(isObject: true);
    }

    public void EndObject()
    {
        _nesting.Close(isObject: true);
        _output.Write("}"u8);
    }

    public void StartArray()
    {
        Before();
        _output.Write("["u8);
        _nesting.Open(isObject: false);
    }

    public void EndArray()
    {
        _nesting.Close(isObject: false);
        _output.Write("]"u8);
    }

    /// <exception cref="ArgumentException">Not after the name before it in UTF-16 order, or text this form refuses.</exception>
    public void Name(string name)
    {
        _output.Write(_nesting.Name(name) ? ","u8 : ""u8);
        Text(name);
        _output.Write(":"u8);
    }

    /// <exception cref="ArgumentException">Beyond ±<see cref="LargestInteger"/>.</exception>
    public void Value(long value)
    {
        if (value is > LargestInteger or < -LargestInteger)
        {
            throw new ArgumentException("An integer beyond ±(2^53−1) does not survive a JSON reader.", nameof(value));
        }

        Before();
        Utf8Formatter.TryFormat(value, _output.GetSpan(20), out var written);
        _output.Advance(written);
    }

    /// <exception cref="ArgumentException">U+0000, or half of a surrogate pair.</exception>
    public void Value(string value)
    {
        Before();
        Text(value);
    }

    public void Value(bool value)
    {
        Before();
        _output.Write(value ? "true"u8 : "false"u8);
    }

    public void Null()
    {
        Before();
        _output.Write("null"u8);
    }

    /// <summary>One value already in RFC 8785 form; taken as it stands.</summary>
    public void Raw(ReadOnlySpan<byte> canonical)
    {
        Before();
        _output.Write(canonical);
    }

    private void Before() => _output.Write(_nesting.Value() ? ","u8 : ""u8);

    private void Text(string text)
    {
        if (text.Contains('\0', StringComparison.Ordinal))
        {
            throw new ArgumentException("A text holds U+0000, which no text of the register may.", nameof(text));
        }

        CanonicalText.Write(text, _output);
    }
}

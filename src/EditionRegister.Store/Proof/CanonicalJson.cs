using System.Buffers;
using System.Text.Json;

namespace EditionRegister.Store.Proof;

/// <summary>Brings any JSON document into the one form of RFC 8785 (JCS), so that equal documents have equal hashes.</summary>
public static class CanonicalJson
{
    /// <summary>How deeply arrays and objects may lie in one another.</summary>
    public const int Deepest = 512;

    /// <exception cref="FormatException">
    /// Not one JSON document in UTF-8, or one without a canonical form: a name twice in an object, half of a surrogate pair,
    /// a number beyond an IEEE 754 double, nested deeper than <see cref="Deepest"/>.
    /// </exception>
    public static byte[] Canonicalise(ReadOnlySpan<byte> utf8Json)
    {
        try
        {
            Utf8JsonReader reader = new(utf8Json, new JsonReaderOptions { MaxDepth = Deepest });
            ArrayBufferWriter<byte> output = new(Math.Max(utf8Json.Length, 1));
            reader.Read();
            Value(ref reader, output);

            // Only whitespace may follow; the reader throws at anything else.
            reader.Read();

            return output.WrittenSpan.ToArray();
        }
        catch (Exception exception) when (exception is JsonException or InvalidOperationException)
        {
            // The reader says InvalidOperationException of text that is not Unicode.
            throw new FormatException($"This is not a JSON document that RFC 8785 can hold: {exception.Message}", exception);
        }
    }

    private static void Value(ref Utf8JsonReader reader, IBufferWriter<byte> output)
    {
        switch (reader.TokenType)
        {
            case JsonTokenType.StartObject: Object(ref reader, output); break;
            case JsonTokenType.StartArray: Array(ref reader, output); break;
            case JsonTokenType.String: CanonicalText.Write(reader.GetString(), output); break;
            case JsonTokenType.Number: CanonicalNumber.Write(reader.GetDouble(), output); break;
            default: output.Write(reader.ValueSpan); break;        // true, false, null: already in their one form
        }
    }

    private static void Array(ref Utf8JsonReader reader, IBufferWriter<byte> output)
    {
        output.Write("["u8);

        for (var first = true; reader.Read() && reader.TokenType != JsonTokenType.EndArray; first = false)
        {
            output.Write(first ? ""u8 : ","u8);
            Value(ref reader, output);
        }

        output.Write("]"u8);
    }

    private static void Object(ref Utf8JsonReader reader, IBufferWriter<byte> output)
    {
        var separator = ""u8;
        output.Write("{"u8);

        foreach (var (name, value) in Members(ref reader))
        {
            output.Write(separator);
            CanonicalText.Write(name, output);
            output.Write(":"u8);
            output.Write(value.WrittenSpan);
            separator = ","u8;
        }

        output.Write("}"u8);
    }

    private static SortedDictionary<string, ArrayBufferWriter<byte>> Members(ref Utf8JsonReader reader)
    {
        // Ordinal comparison is by UTF-16 code units, the order RFC 8785 (3.2.3) asks for.
        SortedDictionary<string, ArrayBufferWriter<byte>> members = new(StringComparer.Ordinal);

        while (reader.Read() && reader.TokenType != JsonTokenType.EndObject)
        {
            var name = reader.GetString()!;
            ArrayBufferWriter<byte> value = new();
            reader.Read();
            Value(ref reader, value);

            if (!members.TryAdd(name, value))
            {
                throw new FormatException($"This JSON document names “{name}” twice in one object, so nobody can say which value holds.");
            }
        }

        return members;
    }
}

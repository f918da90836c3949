using System.Text.Json;
using EditionRegister.Domain.Facts;

namespace EditionRegister.Store.Logbook;

/// <summary>Reads the bytes of an entry back. One reader serves many entries; what it holds is that of the last one read.</summary>
internal sealed class EntryReader
{
    private static readonly NameTable<FactTable> Tables =
        new([.. FactCatalogue.Tables.Select(table => KeyValuePair.Create(table.Name, table))]);

    private static readonly NameTable<int>[] Facts =
        [.. FactCatalogue.Tables.Select(table => new NameTable<int>([.. table.Facts.Select((fact, place) => KeyValuePair.Create(fact.Name, place))]))];

    private readonly List<ReadRow> _sets = [];
    private readonly List<(int Place, FactValue Value)> _values = [];

    public long N { get; private set; }

    public string At { get; private set; } = "";

    public long? Batch { get; private set; }

    public long? By { get; private set; }

    public string Deed { get; private set; } = "";

    public long Format { get; private set; }

    public string Root { get; private set; } = "";

    public IReadOnlyList<ReadRow> Sets => _sets;

    public List<(FactTable Table, long Id)> Unsets { get; } = [];

    public List<SealedName> Erased { get; } = [];

    /// <summary>The open facts of a row read, as places in its table's facts with their values.</summary>
    public IEnumerable<(int Place, FactValue Value)> ValuesOf(ReadRow row) => _values.GetRange(row.First, row.Count);

    /// <summary>The values of all rows; a row's own are <see cref="ReadRow.First"/> and the <see cref="ReadRow.Count"/> after it.</summary>
    public (int Place, FactValue Value) Value(int index) => _values[index];

    /// <exception cref="JsonException">The bytes are not an entry of format 1.</exception>
    public void Read(ReadOnlySpan<byte> body)
    {
        _sets.Clear();
        _values.Clear();
        Unsets.Clear();
        Erased.Clear();

        try
        {
            Utf8JsonReader json = new(body);
            ReadEntry(ref json);
        }
        catch (Exception damage) when (damage is InvalidOperationException or FormatException or OverflowException)
        {
            throw new JsonException(damage.Message, damage);
        }
    }

    /// <summary>Reads the bytes of sealed facts: <c>[table, id, {facts}]</c>.</summary>
    /// <exception cref="JsonException">The bytes are not sealed facts.</exception>
    public static (FactTable Table, long Id, List<(int Place, FactValue Value)> Values) ReadSealed(ReadOnlySpan<byte> body)
    {
        try
        {
            Utf8JsonReader json = new(body);
            Next(ref json, JsonTokenType.StartArray);
            var table = ReadTable(ref json);
            var id = ReadId(ref json);
            Next(ref json, JsonTokenType.StartObject);
            List<(int Place, FactValue Value)> values = [];
            ReadFacts(ref json, table, values);

            return (table, id, values);
        }
        catch (Exception damage) when (damage is InvalidOperationException or FormatException or OverflowException)
        {
            throw new JsonException(damage.Message, damage);
        }
    }

    private static void Next(ref Utf8JsonReader json, JsonTokenType expected)
    {
        if (!json.Read() || json.TokenType != expected)
        {
            throw new JsonException($"expected {expected}");
        }
    }

    private static FactTable ReadTable(ref Utf8JsonReader json)
    {
        Next(ref json, JsonTokenType.String);

        return Tables.TryFind(json.ValueSpan, out var table) ? table : throw new JsonException($"no table {json.GetString()}");
    }

    private static long ReadId(ref Utf8JsonReader json)
    {
        Next(ref json, JsonTokenType.Number);

        return json.GetInt64();
    }

    private static void ReadFacts(ref Utf8JsonReader json, FactTable table, List<(int Place, FactValue Value)> values)
    {
        while (json.Read() && json.TokenType == JsonTokenType.PropertyName)
        {
            if (!Facts[table.Index].TryFind(json.ValueSpan, out var place))
            {
                throw new JsonException($"no fact {table.Name}.{json.GetString()}");
            }

            json.Read();
            values.Add((place, ReadValue(ref json)));
        }
    }

    private static FactValue ReadValue(ref Utf8JsonReader json) => json.TokenType switch
    {
        JsonTokenType.Number => json.GetInt64(),
        JsonTokenType.String => json.GetString(),
        JsonTokenType.Null => FactValue.Null,
        _ => throw new JsonException($"no value is {json.TokenType}"),
    };

    private void ReadEntry(ref Utf8JsonReader json)
    {
        Next(ref json, JsonTokenType.StartObject);

        while (json.Read() && json.TokenType == JsonTokenType.PropertyName)
        {
            ReadMember(ref json);
        }

        if (Format != EntryBody.Format)
        {
            throw new JsonException($"format {Format} is not known");
        }
    }

    private void ReadMember(ref Utf8JsonReader json)
    {
        var name = json.GetString();
        json.Read();

        switch (name)
        {
            case "at": At = json.GetString() ?? ""; break;
            case "batch": Batch = ReadValue(ref json).Number; break;
            case "by": By = ReadValue(ref json).Number; break;
            case "deed": Deed = json.GetString() ?? ""; break;
            case "format": Format = json.GetInt64(); break;
            case "n": N = json.GetInt64(); break;
            case "root": Root = json.GetString() ?? ""; break;
            case "set": ReadSets(ref json); break;
            case "unset": ReadUnsets(ref json); break;
            default: throw new JsonException($"an entry has no {name}");
        }
    }

    private void ReadSets(ref Utf8JsonReader json)
    {
        while (json.Read() && json.TokenType == JsonTokenType.StartArray)
        {
            var table = ReadTable(ref json);
            var id = ReadId(ref json);
            Next(ref json, JsonTokenType.StartObject);
            var first = _values.Count;
            ReadFacts(ref json, table, _values);
            json.Read();
            string? commitment = null;

            if (json.TokenType == JsonTokenType.String)
            {
                commitment = json.GetString();
                json.Read();
            }

            _sets.Add(new ReadRow(table, id, first, _values.Count - first, commitment));
        }
    }

    private void ReadUnsets(ref Utf8JsonReader json)
    {
        while (json.Read() && json.TokenType == JsonTokenType.StartArray)
        {
            json.Read();

            if (json.ValueTextEquals("sealed"u8))
            {
                var n = ReadId(ref json);
                Erased.Add(new SealedName(n, checked((int)ReadId(ref json))));
            }
            else
            {
                var table = Tables.TryFind(json.ValueSpan, out var found) ? found : throw new JsonException($"no table {json.GetString()}");
                Unsets.Add((table, ReadId(ref json)));
            }

            Next(ref json, JsonTokenType.EndArray);
        }
    }
}

/// <summary>A row as an entry sets it: its open facts as a range of the reader's values, and the commitment to its sealed ones.</summary>
internal readonly record struct ReadRow(FactTable Table, long Id, int First, int Count, string? Commitment);

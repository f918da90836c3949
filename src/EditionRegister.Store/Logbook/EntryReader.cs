using System.Text.Json;
using EditionRegister.Domain.Facts;

namespace EditionRegister.Store.Logbook;

/// <summary>Reads the bytes of an entry back. One reader serves many entries; what it holds is that of the last one read.</summary>
internal sealed class EntryReader
{
    private static readonly NameTable Tables = new(FactCatalogue.Tables.Select(table => table.Name));

    private static readonly NameTable[] Facts = [.. FactCatalogue.Tables.Select(table => new NameTable(table.Facts.Select(fact => fact.Name)))];

    public long N { get; private set; }

    public string At { get; private set; } = "";

    public long? Batch { get; private set; }

    public long? By { get; private set; }

    public string Deed { get; private set; } = "";

    public long Format { get; private set; }

    public string Root { get; private set; } = "";

    /// <summary>Rows with their open facts.</summary>
    public List<ReadRow> Sets { get; } = [];

    /// <summary>Rows undone, with no facts.</summary>
    public List<ReadRow> Unsets { get; } = [];

    public List<SealedName> Erased { get; } = [];

    /// <exception cref="JsonException">The bytes are not an entry of format 1.</exception>
    public void Read(ReadOnlySpan<byte> body)
    {
        Sets.Clear();
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
    public static ReadRow ReadSealed(ReadOnlySpan<byte> body)
    {
        try
        {
            Utf8JsonReader json = new(body);
            Next(ref json, JsonTokenType.StartArray);

            return ReadRow(ref json);
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

        return TableHere(ref json);
    }

    private static FactTable TableHere(ref Utf8JsonReader json) =>
        Tables.PlaceOf(json.ValueSpan) is >= 0 and var place ? FactCatalogue.Tables[place] : throw new JsonException($"no table {json.GetString()}");

    private static long ReadId(ref Utf8JsonReader json)
    {
        Next(ref json, JsonTokenType.Number);

        return json.GetInt64();
    }

    /// <summary>Reads a row without what stands behind its facts.</summary>
    private static ReadRow ReadRow(ref Utf8JsonReader json)
    {
        var table = ReadTable(ref json);
        var id = ReadId(ref json);
        Next(ref json, JsonTokenType.StartObject);
        List<ReadFact> facts = [];

        while (json.Read() && json.TokenType == JsonTokenType.PropertyName)
        {
            facts.Add(ReadFact(ref json, table));
        }

        return new ReadRow(table, id, facts);
    }

    private static ReadFact ReadFact(ref Utf8JsonReader json, FactTable table)
    {
        var place = Facts[table.Index].PlaceOf(json.ValueSpan);

        if (place < 0)
        {
            throw new JsonException($"no fact {table.Name}.{json.GetString()}");
        }

        json.Read();

        return new ReadFact(place, ReadValue(ref json));
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
            var row = ReadRow(ref json);
            json.Read();

            if (json.TokenType == JsonTokenType.String)
            {
                row = row with { Commitment = json.GetString() };
                json.Read();
            }

            Sets.Add(row);
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
                Unsets.Add(new ReadRow(TableHere(ref json), ReadId(ref json), []));
            }

            Next(ref json, JsonTokenType.EndArray);
        }
    }
}

/// <summary>A row as an entry sets it: its open facts, and the commitment to its sealed ones.</summary>
internal sealed record ReadRow(FactTable Table, long Id, List<ReadFact> Facts, string? Commitment = null);

/// <summary>One fact of a row, by its place in the table's facts.</summary>
internal sealed record ReadFact(int Place, FactValue Value);

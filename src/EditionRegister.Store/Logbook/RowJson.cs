using System.Text.Json;
using EditionRegister.Domain.Facts;

namespace EditionRegister.Store.Logbook;

/// <summary>Reads rows as entries and sealed facts write them: table, id, facts.</summary>
internal static class RowJson
{
    private static readonly NameTable Tables = new(FactCatalogue.Tables.Select(table => table.Name));

    private static readonly NameTable[] Facts = [.. FactCatalogue.Tables.Select(table => new NameTable(table.Facts.Select(fact => fact.Name)))];

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

    public static void Next(ref Utf8JsonReader json, JsonTokenType expected)
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

    public static FactTable TableHere(ref Utf8JsonReader json) =>
        Tables.PlaceOf(json.ValueSpan) is >= 0 and var place ? FactCatalogue.Tables[place] : throw new JsonException($"no table {json.GetString()}");

    public static long ReadId(ref Utf8JsonReader json)
    {
        Next(ref json, JsonTokenType.Number);

        return json.GetInt64();
    }

    /// <summary>Reads a row without what stands behind its facts.</summary>
    public static ReadRow ReadRow(ref Utf8JsonReader json)
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

    public static FactValue ReadValue(ref Utf8JsonReader json) => json.TokenType switch
    {
        JsonTokenType.Number => json.GetInt64(),
        JsonTokenType.String => json.GetString(),
        JsonTokenType.Null => FactValue.Null,
        _ => throw new JsonException($"no value is {json.TokenType}"),
    };
}

using System.Text.Json;
using EditionRegister.Domain.Facts;

namespace EditionRegister.Store.Logbook;

/// <summary>Reads the bytes of an entry back. One reader serves many entries; what it holds is that of the last one read.</summary>
internal sealed class EntryReader
{
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
        (N, At, Batch, By, Deed, Format, Root) = (0, "", null, null, "", 0, "");
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

    private void ReadEntry(ref Utf8JsonReader json)
    {
        RowJson.Next(ref json, JsonTokenType.StartObject);

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
            case "batch": Batch = RowJson.ReadValue(ref json).Number; break;
            case "by": By = RowJson.ReadValue(ref json).Number; break;
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
            var row = RowJson.ReadRow(ref json);
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
                var n = RowJson.ReadId(ref json);
                Erased.Add(new SealedName(n, checked((int)RowJson.ReadId(ref json))));
            }
            else
            {
                Unsets.Add(new ReadRow(RowJson.TableHere(ref json), RowJson.ReadId(ref json), []));
            }

            RowJson.Next(ref json, JsonTokenType.EndArray);
        }
    }
}

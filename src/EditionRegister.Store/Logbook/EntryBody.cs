using System.Security.Cryptography;
using EditionRegister.Domain.Facts;
using EditionRegister.Store.Proof;

namespace EditionRegister.Store.Logbook;

/// <summary>The sealed facts of one row in one entry: what the entry's body only commits to.</summary>
internal sealed record SealedFacts(int Index, byte[] Salt, byte[] Body);

/// <summary>A sealed row by entry and place in it.</summary>
internal sealed record SealedName(long N, int Index);

/// <summary>
/// The bytes of one entry, RFC 8785 form, format 1:
/// <c>{"at","batch","by","deed","format","n","root","set":[[table,id,{facts},commitment?]],"unset":[[table,id] or ["sealed",n,i]]}</c>.
/// A row's sealed facts stand in the body only as base64url(SHA-256(salt ‖ JCS([table,id,{facts}]))).
/// </summary>
internal sealed class EntryBody
{
    public const int Format = 1;
    public const int SaltLength = 32;

    private readonly CanonicalWriter _writer = new();
    private readonly CanonicalWriter _sealedWriter = new();
    private readonly List<SealedFacts> _sealed = [];

    public IReadOnlyList<SealedFacts> Sealed => _sealed;

    public byte[] Write(EntryHead entry, Deed deed, IReadOnlyList<SealedName> erased, Randomness randomness)
    {
        _writer.Clear();
        _sealed.Clear();
        _writer.StartObject();
        WriteHead(entry);
        WriteSets(deed.Sets, randomness);
        WriteUnsets(deed.Unsets, erased);
        _writer.EndObject();

        return _writer.ToArray();
    }

    /// <summary>The commitment to sealed bytes under a salt, base64url without padding.</summary>
    public static string Commit(ReadOnlySpan<byte> salt, ReadOnlySpan<byte> body)
    {
        byte[] salted = [.. salt, .. body];

        return System.Buffers.Text.Base64Url.EncodeToString(SHA256.HashData(salted));
    }

    private static void WriteFacts(CanonicalWriter writer, RowFacts row, Keeping keeping)
    {
        writer.StartObject();

        foreach (var (fact, value) in row.Values)
        {
            if (fact.Keeping == keeping)
            {
                writer.Name(fact.Name);
                WriteValue(writer, value);
            }
        }

        writer.EndObject();
    }

    private static void WriteValue(CanonicalWriter writer, FactValue value)
    {
        if (value.Number is { } number)
        {
            writer.Value(number);
        }
        else if (value.Text is { } text)
        {
            writer.Value(text);
        }
        else
        {
            writer.Null();
        }
    }

    private void WriteHead(EntryHead entry)
    {
        _writer.Name("at");
        _writer.Value(entry.At);
        _writer.Name("batch");
        WriteValue(_writer, entry.Batch);
        _writer.Name("by");
        WriteValue(_writer, entry.By);
        _writer.Name("deed");
        _writer.Value(entry.Deed);
        _writer.Name("format");
        _writer.Value(Format);
        _writer.Name("n");
        _writer.Value(entry.N);
        _writer.Name("root");
        _writer.Value(entry.Root);
    }

    private void WriteSets(IReadOnlyList<RowFacts> sets, Randomness randomness)
    {
        _writer.Name("set");
        _writer.StartArray();

        for (var i = 0; i < sets.Count; i++)
        {
            var row = sets[i];
            _writer.StartArray();
            _writer.Value(row.Table.Name);
            _writer.Value(row.Id);
            WriteFacts(_writer, row, Keeping.Open);

            if (row.Has(Keeping.Sealed))
            {
                _writer.Value(Seal(i, row, randomness));
            }

            _writer.EndArray();
        }

        _writer.EndArray();
    }

    private string Seal(int index, RowFacts row, Randomness randomness)
    {
        _sealedWriter.Clear();
        _sealedWriter.StartArray();
        _sealedWriter.Value(row.Table.Name);
        _sealedWriter.Value(row.Id);
        WriteFacts(_sealedWriter, row, Keeping.Sealed);
        _sealedWriter.EndArray();

        var salt = new byte[SaltLength];
        randomness.Fill(salt);
        SealedFacts facts = new(index, salt, _sealedWriter.ToArray());
        _sealed.Add(facts);

        return Commit(facts.Salt, facts.Body);
    }

    private void WriteUnsets(IReadOnlyList<RowName> unsets, IReadOnlyList<SealedName> erased)
    {
        _writer.Name("unset");
        _writer.StartArray();

        foreach (var row in unsets)
        {
            _writer.StartArray();
            _writer.Value(row.Table);
            _writer.Value(row.Id);
            _writer.EndArray();
        }

        foreach (var facts in erased)
        {
            _writer.StartArray();
            _writer.Value("sealed");
            _writer.Value(facts.N);
            _writer.Value(facts.Index);
            _writer.EndArray();
        }

        _writer.EndArray();
    }
}

/// <summary>What an entry says about itself before it says what it sets.</summary>
internal sealed record EntryHead(long N, string At, long? Batch, long? By, string Deed, string Root);

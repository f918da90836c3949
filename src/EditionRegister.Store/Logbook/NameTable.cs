namespace EditionRegister.Store.Logbook;

/// <summary>Finds known names by their UTF-8 bytes without making strings: replay meets the same few hundred names millions of times.</summary>
internal sealed class NameTable<T>
{
    private readonly (byte[] Name, T Value)[][] _buckets;

    public NameTable(IReadOnlyCollection<KeyValuePair<string, T>> names)
    {
        _buckets = new (byte[], T)[(names.Count * 2) + 1][];

        foreach (var group in names.Select(pair => (Name: System.Text.Encoding.UTF8.GetBytes(pair.Key), pair.Value)).GroupBy(pair => Bucket(pair.Name)))
        {
            _buckets[group.Key] = [.. group];
        }
    }

    public bool TryFind(ReadOnlySpan<byte> name, out T value)
    {
        foreach (var (known, found) in _buckets[Bucket(name)] ?? [])
        {
            if (name.SequenceEqual(known))
            {
                value = found;

                return true;
            }
        }

        value = default!;

        return false;
    }

    private int Bucket(ReadOnlySpan<byte> name)
    {
        var hash = 17u;

        foreach (var one in name)
        {
            hash = unchecked((hash * 31) + one);
        }

        return (int)(hash % (uint)_buckets.Length);
    }
}

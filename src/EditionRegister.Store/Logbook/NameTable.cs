using System.Text;

namespace EditionRegister.Store.Logbook;

/// <summary>Finds the place of a known name by its UTF-8 bytes, without making strings: replay meets the same few hundred names millions of times.</summary>
internal sealed class NameTable
{
    private const int Free = 0;

    private readonly byte[][] _names;

    // Counted from one.
    private readonly int[] _places;

    /// <param name="names">All different.</param>
    public NameTable(IEnumerable<string> names)
    {
        _names = [.. names.Select(Encoding.UTF8.GetBytes)];

        // Less than half full, so that there is always a free one to end a search.
        _places = new int[(_names.Length * 2) + 1];

        for (var place = 1; place <= _names.Length; place++)
        {
            _places[Slot(_names[place - 1])] = place;
        }
    }

    /// <summary>Its place among the names, or -1 for one that is not known.</summary>
    public int PlaceOf(ReadOnlySpan<byte> name) => _places[Slot(name)] - 1;

    /// <summary>Where a name stands, or where it would.</summary>
    private int Slot(ReadOnlySpan<byte> name)
    {
        var slot = Hash(name) % _places.Length;

        while (_places[slot] is not Free and var place && !name.SequenceEqual(_names[place - 1]))
        {
            slot = (slot + 1) % _places.Length;
        }

        return slot;
    }

    private static int Hash(ReadOnlySpan<byte> name)
    {
        var hash = 17u;

        foreach (var one in name)
        {
            hash = unchecked((hash * 31) + one);
        }

        return (int)(hash >> 1);
    }
}

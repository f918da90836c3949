namespace EditionRegister.UseCases.Looking;

/// <summary>
/// Many texts one after the other in one block, so that a word is looked for in all of them at the speed of memory. Each text ends with a sign that no
/// word holds, or nothing is found across two of them.
/// </summary>
internal sealed class Pile<T>
    where T : unmanaged, IEquatable<T>
{
    private readonly T[] _all;

    // One more than there are texts: where the last one ends.
    private readonly int[] _starts;

    private Pile(T[] all, int[] starts) => (_all, _starts) = (all, starts);

    public static Pile<T> Of<TEntry>(IReadOnlyList<TEntry> entries, Func<TEntry, ReadOnlyMemory<T>> text)
    {
        var starts = new int[entries.Count + 1];

        for (var i = 0; i < entries.Count; i++)
        {
            starts[i + 1] = starts[i] + text(entries[i]).Length;
        }

        var all = new T[starts[^1]];

        for (var i = 0; i < entries.Count; i++)
        {
            text(entries[i]).Span.CopyTo(all.AsSpan(starts[i]));
        }

        return new Pile<T>(all, starts);
    }

    /// <summary>The next text, from <paramref name="from"/> on, that holds the word; -1 when there is none. Every text that is not empty holds an empty word.</summary>
    public int Next(ReadOnlySpan<T> word, int from)
    {
        var start = _starts[from];
        var found = start == _all.Length ? -1 : word.IsEmpty ? 0 : _all.AsSpan(start).IndexOf(word);

        return found < 0 ? -1 : TextAt(start + found, from);
    }

    /// <summary>The last text that starts at or before a position; texts that are empty start where the next one does.</summary>
    private int TextAt(int position, int from)
    {
        var (low, high) = (from, _starts.Length - 2);

        while (low < high)
        {
            var middle = (low + high + 1) / 2;
            (low, high) = _starts[middle] <= position ? (middle, high) : (low, middle - 1);
        }

        return low;
    }
}

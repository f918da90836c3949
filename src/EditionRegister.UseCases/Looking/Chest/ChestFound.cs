using System.Collections;
using EditionRegister.Domain.Reading.Search;

namespace EditionRegister.UseCases.Looking;

/// <summary>Lines found, as the chest stood when they were; nothing that is written later changes them.</summary>
public sealed class ChestFound : IReadOnlyList<ChestLine>
{
    private readonly IReadOnlyList<ChestEntry> _entries;

    // Null is all.
    private readonly int[]? _found;

    internal ChestFound(IReadOnlyList<ChestEntry> entries, int[]? found, Sought sought) => (_entries, _found, Sought) = (entries, found, sought);

    /// <summary>What was looked for, as it was understood.</summary>
    public Sought Sought { get; }

    public int Count => _found?.Length ?? _entries.Count;

    public ChestLine this[int index] => _entries[_found is null ? index : _found[index]].Line;

    public IEnumerator<ChestLine> GetEnumerator()
    {
        for (var i = 0; i < Count; i++)
        {
            yield return this[i];
        }
    }

    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();
}

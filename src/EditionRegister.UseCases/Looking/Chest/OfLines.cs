namespace EditionRegister.UseCases.Looking;

/// <summary>Some small things for each line, one after the other in one block, so that all of them are asked at every key.</summary>
internal sealed class OfLines<T>
    where T : struct
{
    private readonly T[] _all;

    // The line each of them is of.
    private readonly int[] _lines;

    private OfLines(T[] all, int[] lines) => (_all, _lines) = (all, lines);

    public static OfLines<T> Of(IReadOnlyList<ChestEntry> entries, Func<ChestEntry, T[]> things)
    {
        var count = entries.Sum(entry => things(entry).Length);
        var (all, lines, at) = (new T[count], new int[count], 0);

        for (var line = 0; line < entries.Count; line++)
        {
            foreach (var thing in things(entries[line]))
            {
                (all[at], lines[at]) = (thing, line);
                at++;
            }
        }

        return new OfLines<T>(all, lines);
    }

    public void Mark(Func<T, bool> which, LineSet found)
    {
        for (var i = 0; i < _all.Length; i++)
        {
            if (which(_all[i]))
            {
                found.Add(_lines[i]);
            }
        }
    }
}

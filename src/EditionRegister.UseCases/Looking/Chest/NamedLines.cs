using EditionRegister.Domain.Text;

namespace EditionRegister.UseCases.Looking;

/// <summary>Names, and for each the lines it is found on: who owns or has a sheet, or where one lies.</summary>
internal sealed class NamedLines
{
    private readonly Pile<char> _names;
    private readonly int _count;
    private readonly List<int>[] _lines;

    private NamedLines(Pile<char> names, List<int>[] lines) => (_names, _count, _lines) = (names, lines.Length, lines);

    /// <param name="entries">The lines.</param>
    /// <param name="ids">What a line is to be found by.</param>
    /// <param name="name">Its name as shown, or null where there is none.</param>
    public static NamedLines Of(IReadOnlyList<ChestEntry> entries, Func<ChestEntry, long[]> ids, Func<long, string?> name)
    {
        Dictionary<long, List<int>> lines = [];

        for (var line = 0; line < entries.Count; line++)
        {
            foreach (var id in ids(entries[line]))
            {
                if (!lines.TryGetValue(id, out var found))
                {
                    lines.Add(id, found = []);
                }

                found.Add(line);
            }
        }

        var named = lines.Select(pair => (Name: name(pair.Key), Lines: pair.Value)).Where(pair => pair.Name is not null).ToList();

        return new NamedLines(Pile<char>.Of(named.ConvertAll(pair => SearchText.Fold(pair.Name!) + "\n"), folded => folded.AsMemory()), [.. named.Select(pair => pair.Lines)]);
    }

    public void Mark(ReadOnlySpan<char> word, LineSet found)
    {
        for (var at = Next(word, 0); at >= 0; at = Next(word, at + 1))
        {
            foreach (var line in _lines[at])
            {
                found.Add(line);
            }
        }
    }

    private int Next(ReadOnlySpan<char> word, int from) => from >= _count ? -1 : _names.Next(word, from);
}

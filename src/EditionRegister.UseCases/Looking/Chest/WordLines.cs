namespace EditionRegister.UseCases.Looking;

/// <summary>Words of a small list, such as techniques, and for each the lines it stands on.</summary>
internal sealed class WordLines
{
    private readonly Dictionary<string, List<int>> _lines = new(StringComparer.Ordinal);

    public static WordLines Of(IReadOnlyList<ChestEntry> entries, Func<ChestEntry, IReadOnlyList<string>> words)
    {
        WordLines made = new();

        for (var line = 0; line < entries.Count; line++)
        {
            foreach (var word in words(entries[line]))
            {
                if (!made._lines.TryGetValue(word, out var lines))
                {
                    made._lines.Add(word, lines = []);
                }

                lines.Add(line);
            }
        }

        return made;
    }

    public void Mark(Func<string, bool> which, LineSet found)
    {
        foreach (var line in _lines.Where(word => which(word.Key)).SelectMany(word => word.Value))
        {
            found.Add(line);
        }
    }
}

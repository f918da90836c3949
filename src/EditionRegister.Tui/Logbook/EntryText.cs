using EditionRegister.Domain.Text;
using EditionRegister.Tui.Pages;
using EditionRegister.UseCases.Looking;

namespace EditionRegister.Tui.Logbook;

/// <summary>An entry as text: what was done, its hashes, what it sets row by row, and the rest of its batch.</summary>
internal static class EntryText
{
    private const int Label = 12;
    private const int FactLabel = 24;
    private const int GroupsInALine = 4;

    public static IReadOnlyList<Line> Of(EntrySeen seen, int width) => [.. About(seen.Entry, width), .. Hashes(seen), .. Facts(seen, width), .. Batch(seen, width)];

    private static IEnumerable<Line> About(EntryListed entry, int width) =>
    [
        Line.Fact("Entry", Counted.Figure(entry.N), Label),
        Line.Fact("Recorded", $"{entry.At} (UTC)", Label),
        Line.Fact("By", entry.By is { } by ? $"{entry.ByName ?? "someone unknown"} (person {Counted.Figure(by)})" : "nobody was named", Label),
        Line.Fact("Done", entry.DeedInWords, Label),
        .. Wrapped("About", entry.Subject, Label, width),
        .. entry.Batch is { } batch ? [Line.Fact("Batch", Counted.Figure(batch), Label)] : Array.Empty<Line>(),
    ];

    private static IEnumerable<Line> Facts(EntrySeen seen, int width)
    {
        yield return Line.Empty;
        yield return Line.Of("What it says", Tone.Strong);

        if (seen.Damage is { } damage)
        {
            foreach (var line in Wrap.Of($"! The text of this entry is damaged and cannot be read: {damage}", width))
            {
                yield return Line.Of(line, Tone.Bad);
            }
        }
        else if (seen.Facts.Count == 0)
        {
            yield return Line.Of("Nothing but that it was done.", Tone.Quiet);
        }

        (string, long)? row = null;

        foreach (var fact in seen.Facts)
        {
            if (row != (fact.Table, fact.Id))
            {
                row = (fact.Table, fact.Id);
                yield return $"{fact.Table} {Counted.Figure(fact.Id)}";
            }

            foreach (var line in Wrapped($"  {fact.Fact}", fact.Value, FactLabel, width))
            {
                yield return line;
            }
        }
    }

    private static IEnumerable<Line> Batch(EntrySeen seen, int width)
    {
        if (seen.BatchSize < 2)
        {
            yield break;
        }

        yield return Line.Empty;
        yield return Line.Of($"Written at once with it: {Counted.Of(seen.BatchSize, "entry", "entries")} in the batch", Tone.Strong);

        foreach (var mate in seen.Mates)
        {
            var text = $"{Counted.Figure(mate.N),7}  {mate.DeedInWords}, {SafeText.Show(mate.Subject)}";
            yield return Line.Of(TextWidth.Cut(text, width), mate.N == seen.Entry.N ? Tone.Quiet : Tone.Plain);
        }

        if (seen.BatchSize > seen.Mates.Count)
        {
            yield return $"         and {Counted.Figure(seen.BatchSize - seen.Mates.Count)} more.";
        }
    }

    private static IEnumerable<Line> Hashes(EntrySeen seen) =>
    [
        Line.Empty,
        Line.Of("To be compared with a certificate", Tone.Strong),
        .. Hash($"Head of 1 to {Counted.Figure(seen.Entry.N)}", seen.Head),
        .. Hash("Leaf", seen.Leaf),
    ];

    private static IEnumerable<Line> Hash(string label, string hex) => HeadShown.Grouped(hex).Split(' ').Chunk(GroupsInALine)
        .Select((groups, at) => Line.Fact(at == 0 ? label : "", string.Join(' ', groups), FactLabel));

    private static IEnumerable<Line> Wrapped(string label, string text, int columns, int width) =>
        Wrap.Of(text, Math.Max(20, width - columns)).Select((line, at) => Line.Fact(at == 0 ? label : "", line, columns));
}

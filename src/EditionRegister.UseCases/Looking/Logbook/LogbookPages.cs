using EditionRegister.Domain.Text;
using EditionRegister.Store.Reading;

namespace EditionRegister.UseCases.Looking;

/// <summary>Finds entries newest first, reading no further than the page needs.</summary>
internal sealed class LogbookPages(Reader reader, LogbookWanted wanted)
{
    private readonly List<string> _words = [.. (wanted.Text ?? "").Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries).Select(SearchText.Fold)];
    private readonly Dictionary<string, bool> _asked = new(StringComparer.Ordinal);

    public LogbookSeen Find()
    {
        var all = reader.Head.N;
        var found = Found(Math.Min(wanted.Before ?? long.MaxValue, wanted.To is { } to && to < DateOnly.MaxValue ? reader.FirstEntryOn(to.AddDays(1)) : all + 1))
            .Skip(wanted.Skip).Take(wanted.Take + 1L > int.MaxValue ? int.MaxValue : wanted.Take + 1).ToList();
        var page = found.Take(wanted.Take).ToList();
        Subjects subjects = new(reader, page.Select(entry => Subjects.IdIn(entry.Root, "work")).OfType<long>().ToHashSet());

        return new LogbookSeen(page.ConvertAll(subjects.Listed), found.Count > page.Count && page.Count > 0 ? page[^1].N : null, all);
    }

    private IEnumerable<EntryLine> Found(long before)
    {
        var first = wanted.From is { } from ? reader.FirstEntryOn(from) : 0;
        var subjects = _words.Count == 0 ? null : new Subjects(reader, works: null);

        return reader.EntriesDown(before, wanted.Root)
            .TakeWhile(entry => entry.N >= first)
            .Where(entry => (wanted.By is null || entry.By == wanted.By) && (subjects is null || Speaks(subjects, entry.Root)));
    }

    private bool Speaks(Subjects subjects, string root)
    {
        if (!_asked.TryGetValue(root, out var speaks))
        {
            var folded = SearchText.Fold(subjects.Of(root));
            _asked.Add(root, speaks = _words.TrueForAll(word => folded.Contains(word, StringComparison.Ordinal)));
        }

        return speaks;
    }
}

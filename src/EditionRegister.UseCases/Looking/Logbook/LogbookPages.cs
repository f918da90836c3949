using EditionRegister.Domain.Text;
using EditionRegister.Store.Reading;

namespace EditionRegister.UseCases.Looking;

/// <summary>Finds entries newest first, reading no further than the page needs.</summary>
internal sealed class LogbookPages(Reader reader, LogbookWanted wanted)
{
    /// <summary>Up to so many things it is quicker to look their entries up than to leaf through all.</summary>
    private const int Few = 500;

    private readonly List<string> _words = [.. (wanted.Text ?? "").Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries).Select(SearchText.Fold)];

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
        var speaking = _words.Count == 0 ? null : Speaking();
        IReadOnlyCollection<string>? roots = wanted.Root is { } one ? [one] : speaking is { Count: <= Few } ? speaking : null;

        return reader.EntriesDown(before, roots, wanted.By)
            .TakeWhile(entry => entry.N >= first)
            .Where(entry => speaking is null || speaking.Contains(entry.Root));
    }

    /// <summary>What the words speak of; things that are no more are called by nothing.</summary>
    private HashSet<string> Speaking()
    {
        Subjects subjects = new(reader, works: null);

        return [.. subjects.Roots().Where(root => SearchText.Fold(subjects.Of(root)) is var folded && _words.TrueForAll(word => folded.Contains(word, StringComparison.Ordinal)))];
    }
}

using EditionRegister.Domain.Editions;
using EditionRegister.Domain.People;
using EditionRegister.Domain.Reading.Search;
using EditionRegister.Domain.Text;
using EditionRegister.Store.Reading;

namespace EditionRegister.UseCases.Looking;

/// <summary>Makes the lines of the chest from works, makers, editions and numberings; no impression is read.</summary>
internal sealed class ChestReading(Reader reader)
{
    // Folding takes longer than reading, and a maker has many works.
    private readonly Dictionary<long, string> _folded = [];
    private readonly Dictionary<long, string> _sorted = [];
    private readonly Dictionary<(string? Year, string? Technique), string> _said = [];

    /// <param name="works">Only lines of these works; null is all.</param>
    public List<ChestEntry> Lines(IReadOnlyCollection<long>? works)
    {
        var makers = reader.MakersByWork(works);
        var editions = reader.EditionsByWork(works);
        var known = reader.KnownNumbers(works);
        List<ChestEntry> lines = [];

        foreach (var title in reader.Titles(works))
        {
            List<Person> people = [.. makers[title.Id].Select(id => reader.Book.Person(id)).OfType<Person>()];
            var entry = Entry(title, people);
            var declared = editions[title.Id];
            lines.AddRange(declared.Select(edition => Of(entry, edition, known)).DefaultIfEmpty(entry));
        }

        return lines;
    }

    private ChestEntry Entry(ListedTitle title, List<Person> makers)
    {
        var shownMakers = makers.Count == 0 ? "[unknown]" : string.Join(", ", makers.Select(maker => maker.FullName));
        var foldedTitle = SearchText.Fold(title.Shown);
        ChestLine line = new(null, title.Id, 0, title.Shown, shownMakers, title.Year, title.Technique, "", "", "", "", 0, 0, 0, 0);
        ChestKey key = new(makers.Count == 0 ? null : SortedAs(makers[0]), title.TitleState == "untitled" || title.Title is not null ? foldedTitle : null, title.Id, 0, 0);
        var classCodes = string.Concat(makers.Where(maker => maker.ClassCode is not null).Select(maker => SearchText.Fold(maker.ClassCode!) + "\n"));

        return new ChestEntry(line, key, null, [.. makers.Select(maker => maker.Id)])
        {
            Text = $"{foldedTitle}\n{FoldedMakers(makers, shownMakers)}\n{classCodes}",
            Said = Said(title),
            Techniques = title.Techniques,
            Days = DaysThere.Of(title.Dated) is { } days ? [days] : [],
        };
    }

    private static ChestEntry Of(ChestEntry entry, Edition edition, ILookup<long, int> known) => entry with
    {
        Days = DaysThere.Of(edition.Declared) is { } days ? [.. entry.Days, days] : entry.Days,
        Numbers = [.. NumbersOfEdition.Of(edition, known)],
        Edition = edition,
        Key = entry.Key with { Edition = edition.Ordinal, EditionId = edition.Id },
        Line = entry.Line with
        {
            Edition = edition.Id,
            EditionOrdinal = edition.Ordinal,
            Kind = edition.Kind,
            Extent = edition.Extent,
            Closed = edition.Closed,
            Numberings = NumberingsInShort.Of(edition),
        },
    };

    private string Said(ListedTitle title)
    {
        var written = (title.Year, title.Technique);

        if (!_said.TryGetValue(written, out var said))
        {
            _said.Add(written, said = SaidOfWork.Folded(title.Year, title.Technique));
        }

        return said;
    }

    private string FoldedMakers(List<Person> makers, string shown)
    {
        if (makers.Count != 1)
        {
            return SearchText.Fold(shown);
        }

        if (!_folded.TryGetValue(makers[0].Id, out var folded))
        {
            _folded.Add(makers[0].Id, folded = SearchText.Fold(shown));
        }

        return folded;
    }

    private string SortedAs(Person maker)
    {
        if (!_sorted.TryGetValue(maker.Id, out var sorted))
        {
            _sorted.Add(maker.Id, sorted = SearchText.Fold(maker.SortName ?? maker.FullName));
        }

        return sorted;
    }
}

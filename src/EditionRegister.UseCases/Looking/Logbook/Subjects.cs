using System.Globalization;
using EditionRegister.Domain.Facts;
using EditionRegister.Domain.People;
using EditionRegister.Store.Reading;

namespace EditionRegister.UseCases.Looking;

/// <summary>Says in words what entries are on. A thing that is no more is called by its number.</summary>
internal sealed class Subjects
{
    private readonly AddressBook _book;
    private readonly Dictionary<long, ListedTitle> _titles;
    private readonly ILookup<long, long> _makers;
    private readonly Lazy<IReadOnlyDictionary<long, (string Kind, string? File)>> _batches;

    /// <param name="reader">Where names and titles stand.</param>
    /// <param name="works">The works that will be asked for; null is all.</param>
    public Subjects(Reader reader, IReadOnlyCollection<long>? works)
    {
        _book = reader.Book;
        _titles = reader.Titles(works).ToDictionary(title => title.Id);
        _makers = reader.MakersByWork(works);
        _batches = new(reader.Batches);
    }

    /// <summary>The id in a root like "work/17", where it is of that kind.</summary>
    public static long? IdIn(string root, string kind) =>
        root.Length > kind.Length && root.StartsWith(kind, StringComparison.Ordinal) && root[kind.Length] == '/'
            && long.TryParse(root.AsSpan(kind.Length + 1), NumberStyles.None, CultureInfo.InvariantCulture, out var id) ? id : null;

    public EntryListed Listed(EntryLine entry) => new(
        entry.N, entry.At, entry.Deed, DeedInWords.Of(entry.Deed), entry.Root, Of(entry.Root), entry.By, entry.By is { } by ? _book.NameOf(by) : null, entry.Batch);

    /// <summary>Everything an entry may be on that still has a name.</summary>
    public IEnumerable<string> Roots() =>
    [
        "register/1",
        .. _titles.Keys.Select(work => Root.Work(work).ToString()),
        .. _book.People.Keys.Select(person => Root.Person(person).ToString()),
        .. _book.Places.Keys.Select(place => Root.Place(place).ToString()),
        .. _batches.Value.Keys.Select(batch => Root.Batch(batch).ToString()),
    ];

    public string Of(string root) =>
        IdIn(root, "work") is { } work && _titles.TryGetValue(work, out var title) ? Called(title)
        : IdIn(root, "person") is { } person && _book.Person(person) is { } known ? known.FullName
        : IdIn(root, "place") is { } place && _book.Places.ContainsKey(place) ? _book.PathOf(place)
        : IdIn(root, "batch") is { } batch && _batches.Value.TryGetValue(batch, out var made) && made.Kind == "read-in" ? FileOf(batch, made.File)
        : IdIn(root, "register") is not null ? "the register"
        : root.Replace('/', ' ');

    private static string FileOf(long batch, string? file) => string.Create(CultureInfo.InvariantCulture, $"batch {batch}, the file {(file is null ? "(erased)" : $"“{file}”")}");

    private string Called(ListedTitle title)
    {
        var called = title is { TitleState: not "untitled", Title: not null } ? $"“{title.Title}”" : title.Shown;
        var makers = _makers[title.Id].Select(id => _book.Person(id)).OfType<Person>().Select(maker => maker.FullName).ToList();

        return makers.Count == 0 ? called : $"{called} by {string.Join(", ", makers)}";
    }
}

using EditionRegister.Domain.Documents;
using EditionRegister.Domain.People;
using EditionRegister.Domain.Reading.Search;
using EditionRegister.Store;
using EditionRegister.Store.Lists;
using EditionRegister.Store.Reading;

namespace EditionRegister.UseCases.Looking;

/// <summary>
/// All editions, and the works without one, held in memory and found while one types. Keep one and let one thread open, read and refresh it; any thread
/// may look meanwhile, and sees the chest as it last stood whole.
/// </summary>
public sealed class PlanChest(RegisterStore store, long? keeper)
{
    /// <summary>From so many works on, everything is read anew at once.</summary>
    private const int Many = 500;

    private volatile ChestPicture _picture = ChestPicture.Empty;

    /// <summary>The entry of the logbook it stands at.</summary>
    public LogbookHead Head => _picture.Head;

    /// <summary>Whether codes, places, holders, owners and counts are there yet.</summary>
    public bool SheetsAreRead => _picture.SheetsAreRead;

    /// <summary>How many lines there are in all.</summary>
    public int Count => _picture.Entries.Count;

    /// <summary>Reads the lines with title, makers and numberings, so that a first list stands at once; the sheets come with <see cref="ReadSheets"/>.</summary>
    /// <exception cref="Domain.RefusedException">The register cannot be opened or read.</exception>
    public void Open() => _picture = store.Read(reader => new ChestPicture(reader.Head, reader.Book, reader.OwnWords, new ChestReading(reader).Lines(null), sheetsAreRead: false));

    /// <summary>Reads what needs every impression, in one pass; lines that another program wrote meanwhile come along.</summary>
    /// <exception cref="Domain.RefusedException">The register cannot be opened or read.</exception>
    public void ReadSheets() => _picture = store.Read(reader => Whole(reader, _picture));

    /// <summary>
    /// Every part of the text is met. A word is found in the title, a maker's name or class code, the code of a sheet or a part of it, the name of a place it
    /// lies in or of one around that, the name of its owner or of who has it, or (three letters and more) the year or the technique as written. Case and
    /// accents make no difference, nor do dashes in a code. A number is also met where the edition has it, or a sheet says so; a date by the year of the work,
    /// by the days its sheets were printed on and by that of declaring; a technique by whatever words it was written in. Blank finds all. Always by maker,
    /// title and edition. A sheet without a number is found on the line of its work's first edition.
    /// </summary>
    public ChestFound Find(string? text) => FindSought(Read(text));

    /// <summary>The same, of what was read before.</summary>
    public ChestFound FindSought(Sought sought) => _picture.Find(sought);

    /// <summary>What somebody means by a text.</summary>
    public Sought Read(string? text) => Sought.Read(text, _picture.OwnWords);

    /// <summary>Takes up what was written since, by whatever program; answers whether anything was.</summary>
    /// <exception cref="Domain.RefusedException">The register cannot be opened or read.</exception>
    public bool Refresh()
    {
        var before = _picture;
        _picture = store.Read(reader => Refreshed(reader, before));

        return !ReferenceEquals(_picture, before);
    }

    private ChestPicture Refreshed(Reader reader, ChestPicture before)
    {
        if (reader.Head == before.Head)
        {
            return before;
        }

        var since = reader.Since(before.Head);
        var works = since.Roots.Select(root => Subjects.IdIn(root, "work")).OfType<long>().ToHashSet();

        return !since.Continues || works.Count > Many || !SameNames(before.Book, reader.Book)
            ? before.SheetsAreRead ? Whole(reader, ChestPicture.Empty) : new ChestPicture(reader.Head, reader.Book, reader.OwnWords, new ChestReading(reader).Lines(null), sheetsAreRead: false)
            : Mended(reader, before, works);
    }

    private ChestPicture Mended(Reader reader, ChestPicture before, HashSet<long> works)
    {
        if (works.Count == 0)
        {
            return before.At(reader.Head, reader.Book, reader.OwnWords);
        }

        var lines = new ChestReading(reader).Lines(works);
        var laid = before.SheetsAreRead ? new SheetsOnLines(lines, ChestSheets.Read(reader, works), reader.Book, keeper).Lay() : lines;

        return new ChestPicture(reader.Head, reader.Book, reader.OwnWords, before.Entries.Where(entry => !works.Contains(entry.Line.Work)).Concat(laid), before.SheetsAreRead);
    }

    private ChestPicture Whole(Reader reader, ChestPicture before)
    {
        var lines = reader.Head == before.Head ? before.Entries : new ChestReading(reader).Lines(null);

        return new ChestPicture(reader.Head, reader.Book, reader.OwnWords, new SheetsOnLines(lines, ChestSheets.Read(reader, null), reader.Book, keeper).Lay(), sheetsAreRead: true);
    }

    /// <summary>Whether everybody and every place known before is still called, kept and nested as before; who is new stands on no line that is not written anew.</summary>
    private static bool SameNames(AddressBook before, AddressBook now) =>
        before.People.Values.All(person => now.Person(person.Id) is { } same
            && (person.FullName, person.SortName, person.ClassCode) == (same.FullName, same.SortName, same.ClassCode))
        && before.Places.Values.All(place => now.Places.TryGetValue(place.Id, out var same)
            && (place.Name, place.Inside, place.Keeper) == (same.Name, same.Inside, same.Keeper));
}

using EditionRegister.Domain.Documents;
using EditionRegister.Domain.People;
using EditionRegister.Domain.Reading.Search;
using EditionRegister.Domain.Works;

namespace EditionRegister.UseCases.Looking;

/// <summary>The plan chest at one moment, in its order and ready to be searched. Nothing in it ever changes, so any thread may look.</summary>
internal sealed class ChestPicture
{
    public ChestPicture(LogbookHead head, AddressBook book, OwnWords own, IEnumerable<ChestEntry> entries, bool sheetsAreRead)
    {
        Head = head;
        Book = book;
        OwnWords = own;
        SheetsAreRead = sheetsAreRead;
        Entries = [.. entries.OrderBy(entry => entry.Key)];
        Index = new ChestIndex(Entries, book);
    }

    private ChestPicture(ChestPicture same, LogbookHead head, AddressBook book, OwnWords own) =>
        (Head, Book, OwnWords, SheetsAreRead, Entries, Index) = (head, book, own, same.SheetsAreRead, same.Entries, same.Index);

    public static ChestPicture Empty { get; } =
        new(LogbookHead.None, new AddressBook(new Dictionary<long, Person>(), new Dictionary<long, Place>()), OwnWords.None, [], sheetsAreRead: false);

    public LogbookHead Head { get; }

    public AddressBook Book { get; }

    /// <summary>Whose marks are understood in what is typed.</summary>
    public OwnWords OwnWords { get; }

    public bool SheetsAreRead { get; }

    public IReadOnlyList<ChestEntry> Entries { get; }

    private ChestIndex Index { get; }

    /// <summary>The same lines, after entries that touched none of them.</summary>
    public ChestPicture At(LogbookHead head, AddressBook book, OwnWords own) => new(this, head, book, own);

    public ChestFound Find(Sought sought)
    {
        LineSet? found = null;

        foreach (var part in sought.Parts)
        {
            var here = Index.Meeting(part);
            found?.KeepOnly(here);
            found ??= here;
        }

        return new ChestFound(Entries, found?.ToArray(), sought);
    }
}

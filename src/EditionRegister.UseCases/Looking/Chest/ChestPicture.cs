using EditionRegister.Domain.Codes;
using EditionRegister.Domain.Documents;
using EditionRegister.Domain.People;
using EditionRegister.Domain.Text;

namespace EditionRegister.UseCases.Looking;

/// <summary>The plan chest at one moment, in its order and ready to be searched. Nothing in it ever changes, so any thread may look.</summary>
internal sealed class ChestPicture
{
    private readonly Pile<char> _texts;
    private readonly Pile<byte> _codes;
    private readonly NamedLines _people;
    private readonly NamedLines _places;

    public ChestPicture(LogbookHead head, AddressBook book, IEnumerable<ChestEntry> entries, bool sheetsAreRead)
    {
        Head = head;
        Book = book;
        SheetsAreRead = sheetsAreRead;
        Entries = [.. entries.OrderBy(entry => entry.Key)];
        _texts = Pile<char>.Of(Entries, entry => entry.Text.AsMemory());
        _codes = Pile<byte>.Of(Entries, entry => entry.Codes);
        _people = NamedLines.Of(Entries, entry => entry.People, id => book.Person(id)?.FullName);
        _places = NamedLines.Of(Entries, entry => entry.Places, id => book.Places.ContainsKey(id) ? book.PathOf(id) : null);
    }

    private ChestPicture(ChestPicture same, LogbookHead head, AddressBook book)
    {
        (Head, Book, SheetsAreRead, Entries) = (head, book, same.SheetsAreRead, same.Entries);
        (_texts, _codes, _people, _places) = (same._texts, same._codes, same._people, same._places);
    }

    public static ChestPicture Empty { get; } =
        new(LogbookHead.None, new AddressBook(new Dictionary<long, Person>(), new Dictionary<long, Place>()), [], sheetsAreRead: false);

    public LogbookHead Head { get; }

    public AddressBook Book { get; }

    public bool SheetsAreRead { get; }

    public IReadOnlyList<ChestEntry> Entries { get; }

    /// <summary>The same lines, after entries that touched none of them.</summary>
    public ChestPicture At(LogbookHead head, AddressBook book) => new(this, head, book);

    public ChestFound Find(string? text)
    {
        LineSet? found = null;

        foreach (var word in (text ?? "").Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries))
        {
            var here = Holding(word);
            found?.KeepOnly(here);
            found ??= here;
        }

        return new ChestFound(Entries, found?.ToArray());
    }

    private LineSet Holding(string word)
    {
        LineSet found = new(Entries.Count);

        if (Entries.Count > 0)
        {
            var folded = SearchText.Fold(word);
            Mark(_texts, folded, found);
            _people.Mark(folded, found);
            _places.Mark(folded, found);

            if (InCode(word) is { } inCode)
            {
                Mark(_codes, inCode, found);
            }
        }

        return found;
    }

    private void Mark<T>(Pile<T> pile, ReadOnlySpan<T> word, LineSet found)
        where T : unmanaged, IEquatable<T>
    {
        for (var at = pile.Next(word, 0); at >= 0; at = at + 1 < Entries.Count ? pile.Next(word, at + 1) : -1)
        {
            found.Add(at);
        }
    }

    /// <summary>The word as a part of a code, or null where no code can hold it.</summary>
    private static byte[]? InCode(string word)
    {
        var bare = string.Concat(word.Where(c => c is not ('-' or '\u2010' or '\u2011' or '\u2012' or '\u2013'))).ToUpperInvariant();

        return bare.All(c => RegisterCode.Alphabet.Contains(c, StringComparison.Ordinal)) ? System.Text.Encoding.ASCII.GetBytes(bare) : null;
    }
}

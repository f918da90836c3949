using EditionRegister.Domain.Codes;
using EditionRegister.Domain.People;
using EditionRegister.Domain.Reading.Search;
using EditionRegister.Domain.Text;

namespace EditionRegister.UseCases.Looking;

/// <summary>What the lines of a chest are found by, laid out so that a part of what is typed is met in all of them at the speed of memory. Nothing is parsed here.</summary>
internal sealed class ChestIndex(IReadOnlyList<ChestEntry> entries, AddressBook book)
{
    private readonly Pile<char> _texts = Pile<char>.Of(entries, entry => entry.Text.AsMemory());
    private readonly Pile<char> _said = Pile<char>.Of(entries, entry => entry.Said.AsMemory());
    private readonly Pile<byte> _codes = Pile<byte>.Of(entries, entry => entry.Codes);
    private readonly NamedLines _people = NamedLines.Of(entries, entry => entry.People, id => book.Person(id)?.FullName);
    private readonly NamedLines _places = NamedLines.Of(entries, entry => entry.Places, id => book.Places.ContainsKey(id) ? book.PathOf(id) : null);
    private readonly OfLines<NumbersThere> _numbers = OfLines<NumbersThere>.Of(entries, entry => entry.Numbers);
    private readonly OfLines<DaysThere> _days = OfLines<DaysThere>.Of(entries, entry => entry.Days);
    private readonly WordLines _techniques = WordLines.Of(entries, entry => entry.Techniques);

    /// <summary>The lines that a part is met on: by what was read in it, or by all of its words.</summary>
    public LineSet Meeting(SoughtPart part)
    {
        LineSet? found = null;

        foreach (var word in part.Words)
        {
            var here = Holding(word);
            found?.KeepOnly(here);
            found ??= here;
        }

        found ??= new LineSet(entries.Count);
        AddRead(part, found);

        return found;
    }

    private void AddRead(SoughtPart part, LineSet found)
    {
        if (part.Number is { } number)
        {
            _numbers.Mark(there => number.Fits(there), found);
        }

        if (part.Dates is { } dates)
        {
            _days.Mark(there => dates.Meets(there), found);
        }

        if (part.Techniques.Count > 0)
        {
            found.AddAll(InTechniques(part));
        }
    }

    private LineSet InTechniques(SoughtPart part)
    {
        LineSet? all = null;

        foreach (var technique in part.Techniques)
        {
            LineSet of = new(entries.Count);
            _techniques.Mark(word => SoughtPart.IsOfKind(word, technique), of);
            all?.KeepOnly(of);
            all ??= of;
        }

        return all!;
    }

    private LineSet Holding(string word)
    {
        LineSet found = new(entries.Count);

        if (entries.Count > 0)
        {
            var folded = SearchText.Fold(word);
            Mark(_texts, folded, found);
            _people.Mark(folded, found);
            _places.Mark(folded, found);

            if (folded.Length >= SaidOfWork.LeastLength)
            {
                Mark(_said, folded, found);
            }

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
        for (var at = pile.Next(word, 0); at >= 0; at = at + 1 < entries.Count ? pile.Next(word, at + 1) : -1)
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

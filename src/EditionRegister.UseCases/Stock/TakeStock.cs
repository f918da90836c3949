using EditionRegister.Domain.Dates;
using EditionRegister.Domain.Facts;
using EditionRegister.Domain.Stock;
using EditionRegister.Store;
using EditionRegister.UseCases.People;

namespace EditionRegister.UseCases.Stock;

/// <summary>What is counted in a place, when and by whom.</summary>
public sealed record StockToTake
{
    /// <summary>The end of its path is enough.</summary>
    public required string Place { get; init; }

    /// <summary>Only the place itself, without those inside it.</summary>
    public bool Alone { get; init; }

    /// <summary>Today when not said.</summary>
    public RecordedDate? Date { get; init; }

    /// <summary>By whom: a name or number of the address book; the one who writes when not said.</summary>
    public string? Person { get; init; }

    public string? Note { get; init; }

    /// <summary>Nothing lies there: then no code is needed.</summary>
    public bool IsEmpty { get; init; }
}

/// <summary>Records what was scanned in a place against what should lie there. What the register says of the sheets is not changed by it.</summary>
public sealed class TakeStock(RegisterStore store, long? by)
{
    /// <summary>Answers the number of the stock-take.</summary>
    /// <exception cref="Domain.RefusedException">place-not-found, scan-misread, no-codes-scanned, nothing-to-count.</exception>
    public long Run(StockToTake wanted, ScanList scans) => store.Write("take-stock", writing =>
    {
        var book = writing.Read.Book;
        var place = Places.Find(book, wanted.Place);
        var scanned = Scanned.Find(writing.Read, scans);

        if (scanned.Count == 0 && !wanted.IsEmpty)
        {
            throw StockRefusals.NoCodes();
        }

        var expected = writing.Read.StockIn(wanted.Alone ? [place] : [.. Places.Within(book, place)]);
        StockTake take = new(0, 0, place, StockOccasion.StockTake, wanted.Date ?? Today.Of(store), wanted.Person is { } who ? Persons.Find(book, who) : by, wanted.Note, []);

        return StockDeeds.Record(take, StockComparison.Of(expected, scanned), writing.On(Root.Place(place)));
    });
}

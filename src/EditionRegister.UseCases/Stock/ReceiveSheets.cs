using EditionRegister.Domain.Chains;
using EditionRegister.Domain.Dates;
using EditionRegister.Domain.Facts;
using EditionRegister.Domain.Stock;
using EditionRegister.Store;
using EditionRegister.UseCases.People;

namespace EditionRegister.UseCases.Stock;

/// <summary>What came back: from whom, and where it is put.</summary>
public sealed record SheetsToReceive
{
    public required string Place { get; init; }

    public required string From { get; init; }

    public RecordedDate? Date { get; init; }

    public string? Person { get; init; }

    public string? Note { get; init; }
}

/// <summary>Records codes that came back against what is out with someone: what was scanned is put away, what was not is still out.</summary>
public sealed class ReceiveSheets(RegisterStore store, long? by)
{
    /// <summary>Answers the number of the return.</summary>
    /// <exception cref="Domain.RefusedException">place-not-found, person-not-found, nothing-awaited, scan-misread, no-codes-scanned, or one of the chain's.</exception>
    public long Run(SheetsToReceive wanted, ScanList scans) => store.Write("receive-sheets", writing =>
    {
        var book = writing.Read.Book;
        var (place, from) = (Places.Find(book, wanted.Place), Persons.Find(book, wanted.From));
        var date = wanted.Date ?? Today.Of(store);
        var awaited = writing.Read.StockWith(from);

        if (awaited.Count == 0)
        {
            throw StockRefusals.NothingAwaited(book.NameOf(from));
        }

        var scanned = Scanned.Find(writing.Read, scans);

        if (scanned.Count == 0)
        {
            throw StockRefusals.NoCodes();
        }

        var found = StockComparison.Of(awaited, scanned);
        WorksAtHand works = new(writing.Read);

        foreach (var ofWork in found.Where(line => line.Outcome == StockOutcome.Present).GroupBy(line => line.Thing!.Work))
        {
            WhereaboutsDeeds.Return(works.Work(ofWork.Key), [.. ofWork.Select(line => works.Sheet(line.Thing!)).OfType<Domain.Impressions.Impression>()], from, place, date, null, writing.On(Root.Work(ofWork.Key)));
        }

        StockTake take = new(0, 0, place, StockOccasion.Return, date, wanted.Person is { } who ? Persons.Find(book, who) : by, $"back from {book.NameOf(from)}{(wanted.Note is { } note ? $": {note}" : "")}", []);

        return StockDeeds.Record(take, found, writing.On(Root.Place(place)));
    });
}

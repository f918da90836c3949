using EditionRegister.Domain.Chains;
using EditionRegister.Domain.Dates;
using EditionRegister.Domain.Facts;
using EditionRegister.Domain.Stock;
using EditionRegister.Store;
using EditionRegister.UseCases.Choosing;
using EditionRegister.UseCases.People;

namespace EditionRegister.UseCases.Stock;

/// <summary>What was to go, to whom and on what terms.</summary>
public sealed record SheetsToDeliver
{
    /// <summary>The place they go out of.</summary>
    public required string Place { get; init; }

    /// <summary>What was to go.</summary>
    public required ImpressionChoice Going { get; init; }

    public required string To { get; init; }

    /// <summary>consigned, lent or exhibited.</summary>
    public required MoveKind As { get; init; }

    public RecordedDate? Date { get; init; }

    public RecordedDate? Until { get; init; }

    /// <summary>The consignee's share in hundredths of a per cent.</summary>
    public int? Rate { get; init; }

    /// <summary>What was handed over without having been meant to go goes too.</summary>
    public bool StrangersGo { get; init; }

    public string? Person { get; init; }

    public string? Note { get; init; }
}

/// <summary>Records codes handed over against what was to go: what was scanned goes, what was not stays where it is.</summary>
public sealed class DeliverSheets(RegisterStore store, long? by)
{
    /// <summary>Answers the number of the delivery.</summary>
    /// <exception cref="Domain.RefusedException">place-not-found, person-not-found, scan-misread, no-codes-scanned, not-here-to-go, or a choice that finds nothing.</exception>
    public long Run(SheetsToDeliver wanted, ScanList scans) => store.Write("deliver-sheets", writing =>
    {
        var book = writing.Read.Book;
        var (place, to) = (Places.Find(book, wanted.Place), Persons.Find(book, wanted.To));
        var date = wanted.Date ?? Today.Of(store);
        var scanned = Scanned.Find(writing.Read, scans);

        if (scanned.Count == 0)
        {
            throw StockRefusals.NoCodes();
        }

        var going = ImpressionsChosen.Find(writing.Read, wanted.Going).SelectMany(chosen => chosen.Sheets.Select(sheet => new StockThing(chosen.Work.Id, sheet.Code, sheet.Id, null))).ToList();
        var found = StockComparison.Of(going, scanned);
        Handing handing = new(wanted.As, to, wanted.Until ?? RecordedDate.None, wanted.Rate, wanted.Going.Show);
        WorksAtHand works = new(writing.Read);

        foreach (var ofWork in found.Where(line => line.Outcome == StockOutcome.Present || (wanted.StrangersGo && line.Outcome == StockOutcome.Stranger)).GroupBy(line => line.Thing!.Work))
        {
            StockDeeds.HandOver(works.Work(ofWork.Key), [.. ofWork.Select(line => works.Sheet(line.Thing!)).OfType<Domain.Impressions.Impression>()], handing, date, writing.On(Root.Work(ofWork.Key)));
        }

        StockTake take = new(0, 0, place, StockOccasion.Delivery, date, wanted.Person is { } who ? Persons.Find(book, who) : by, Noted(wanted, book.NameOf(to)), []);

        return StockDeeds.Record(take, found, writing.On(Root.Place(place)));
    });

    /// <summary>To whom is told by the moves themselves; here it stands so that a list of deliveries can be read.</summary>
    private static string Noted(SheetsToDeliver wanted, string to) => $"{wanted.As.Name} to {to}{(wanted.Note is { } note ? $": {note}" : "")}";
}

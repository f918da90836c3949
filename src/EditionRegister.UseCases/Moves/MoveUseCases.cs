using EditionRegister.Domain.Chains;
using EditionRegister.Domain.Dates;
using EditionRegister.Store;
using EditionRegister.UseCases.Choosing;
using EditionRegister.UseCases.People;

namespace EditionRegister.UseCases.Moves;

/// <summary>Puts sheets away in a place.</summary>
public sealed class PutAway(RegisterStore store)
{
    /// <summary>Answers how many sheets were put away.</summary>
    /// <exception cref="Domain.RefusedException">place-not-found, or one of <see cref="ChainRefusals"/>.</exception>
    public int Run(ImpressionChoice choice, string place, RecordedDate? date = null, string? note = null) =>
        DeedOnChosen.Run(store, "put-away", choice, (writing, chosen, deed) => WhereaboutsDeeds.PutAway(
            chosen.Work, chosen.Sheets, Places.Find(writing.Read.Book, place), date ?? Today.Of(store), note, deed));
}

/// <summary>Gives sheets into consignment: they stay their owner's.</summary>
public sealed class Consign(RegisterStore store)
{
    /// <param name="choice">Which sheets.</param>
    /// <param name="to">To whom, as in the address book.</param>
    /// <param name="date">When; today when not said.</param>
    /// <param name="until">Until when.</param>
    /// <param name="rate">The consignee's share in hundredths of a per cent.</param>
    /// <param name="note">As written.</param>
    public int Run(ImpressionChoice choice, string to, RecordedDate? date = null, RecordedDate? until = null, int? rate = null, string? note = null) =>
        DeedOnChosen.Run(store, "consign", choice, (writing, chosen, deed) => WhereaboutsDeeds.Consign(
            chosen.Work, chosen.Sheets, new Consignment(Persons.Find(writing.Read.Book, to), until ?? RecordedDate.None, rate, note), date ?? Today.Of(store), deed));
}

/// <summary>Takes sheets back from whoever has them.</summary>
public sealed class ReturnImpressions(RegisterStore store)
{
    /// <exception cref="Domain.RefusedException">not-with-them, not-away, and others of <see cref="ChainRefusals"/>.</exception>
    public int Run(ImpressionChoice choice, string? from, string? place, RecordedDate? date = null, string? note = null) =>
        DeedOnChosen.Run(store, "return", choice, (writing, chosen, deed) => WhereaboutsDeeds.Return(
            chosen.Work,
            chosen.Sheets,
            from is null ? null : Persons.Find(writing.Read.Book, from),
            place is null ? null : Places.Find(writing.Read.Book, place),
            date ?? Today.Of(store),
            note,
            deed));
}

/// <summary>People of a sale as a person names them; null is not said, and for the buyer not known.</summary>
public sealed record SalePeople(string? Buyer, string? Seller = null, string? Agent = null);

/// <summary>Records that sheets were sold, each for the price given.</summary>
public sealed class SellImpressions(RegisterStore store)
{
    /// <exception cref="Domain.RefusedException">not-theirs-to-sell, sold-already, and others of <see cref="ChainRefusals"/>.</exception>
    public int Run(ImpressionChoice choice, SalePeople people, Sale sale) =>
        DeedOnChosen.Run(store, "sell", choice, (writing, chosen, deed) =>
        {
            var dated = sale with
            {
                Buyer = Find(people.Buyer),
                Seller = Find(people.Seller),
                Agent = Find(people.Agent),
                Date = sale.Date.IsKnown ? sale.Date : Today.Of(store),
            };
            dated.Record(chosen.Work, chosen.Sheets, deed);

            long? Find(string? who) => who is null ? null : Persons.Find(writing.Read.Book, who);
        });
}

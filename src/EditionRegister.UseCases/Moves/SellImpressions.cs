using EditionRegister.Domain.Chains;
using EditionRegister.Store;
using EditionRegister.UseCases.Choosing;
using EditionRegister.UseCases.People;

namespace EditionRegister.UseCases.Moves;

/// <summary>Records that sheets were sold, each for the price given.</summary>
public sealed class SellImpressions(RegisterStore store)
{
    /// <exception cref="Domain.RefusedException">not-theirs-to-sell, sold-already, and others of <see cref="ChainRefusals"/>.</exception>
    public int Run(ImpressionChoice choice, SalePeople people, Sale sale) => Sell(choice, people, sale).Count;

    /// <summary>As <see cref="Run"/>, and says how many of them were sold on by a later owner.</summary>
    public SheetsSold Sell(ImpressionChoice choice, SalePeople people, Sale sale)
    {
        var resold = 0;
        var count = DeedOnChosen.Run(store, "sell", choice, (writing, chosen, deed) =>
        {
            var dated = sale with
            {
                Buyer = Find(people.Buyer),
                Seller = Find(people.Seller),
                Agent = Find(people.Agent),
                Date = sale.Date.IsKnown ? sale.Date : Today.Of(store),
            };

            foreach (var (sheets, from) in PassingWithCopy.Of(chosen, dated.Seller, dated.Buyer))
            {
                // The price is the copy's; what lies in it passes on with it.
                (chosen.GoWithCopy ? dated with { Price = null, Net = null, Seller = from } : dated).Record(chosen.Work, sheets, deed);
            }

            foreach (var sheet in PassingWithCopy.Theirs(chosen, dated.Buyer).Where(sheet => dated.Collected && sheet.Where != Position.With(dated.Buyer!.Value)))
            {
                WhereaboutsDeeds.HandOver(chosen.Work, sheet, sheet.Whose!, dated.Date, note: null, deed);
            }

            resold += chosen.GoWithCopy ? 0 : chosen.Sheets.Count(sheet => Transfers.HasLeftTheMaker(chosen.Work, sheet));

            long? Find(string? who) => who is null ? null : Persons.Find(writing.Read.Book, who);
        });

        return new SheetsSold(count, resold);
    }
}

/// <summary>How many sheets were sold, and how many of them by an owner who had not made them.</summary>
public sealed record SheetsSold(int Count, int Resold);

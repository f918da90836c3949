using EditionRegister.Domain.Chains;
using EditionRegister.Domain.Facts;
using EditionRegister.Store;
using EditionRegister.UseCases.Choosing;
using EditionRegister.UseCases.People;

namespace EditionRegister.UseCases.Moves;

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

            if (chosen.GoWithCopy)
            {
                PassOnWithCopy(chosen, dated, deed);
            }
            else
            {
                dated.Record(chosen.Work, chosen.Sheets, deed);
            }

            long? Find(string? who) => who is null ? null : Persons.Find(writing.Read.Book, who);
        });

    /// <summary>The price is the copy's. What lies in it may be its maker's still, and not who sells the copy; and the buyer may own some of it already, as in an exchange.</summary>
    private static void PassOnWithCopy(ChosenOfWork chosen, Sale sale, Deed deed)
    {
        var theirs = chosen.Sheets.Where(sheet => sale.Buyer is { } buyer && sheet.Whose == Owner.Known(buyer)).ToList();
        var passing = sale with { Price = null, Net = null };
        var others = chosen.Sheets.Except(theirs).ToLookup(sheet => sheet.Whose?.Person == sale.Seller);
        passing.Record(chosen.Work, [.. others[true]], deed);
        (passing with { Seller = null }).Record(chosen.Work, [.. others[false]], deed);

        foreach (var sheet in theirs.Where(sheet => sale.Collected && sheet.Where != Position.With(sale.Buyer!.Value)))
        {
            WhereaboutsDeeds.HandOver(chosen.Work, sheet, Owner.Known(sale.Buyer!.Value), sale.Date, deed);
        }
    }
}

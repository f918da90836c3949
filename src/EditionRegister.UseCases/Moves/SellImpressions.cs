using EditionRegister.Domain.Chains;
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
            // The price is the copy's; what lies in it passes on with it.
            (chosen.GoWithCopy ? dated with { Price = null, Net = null } : dated).Record(chosen.Work, chosen.Sheets, deed);

            long? Find(string? who) => who is null ? null : Persons.Find(writing.Read.Book, who);
        });
}

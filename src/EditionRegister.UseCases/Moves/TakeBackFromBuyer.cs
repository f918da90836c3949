using EditionRegister.Domain.Chains;
using EditionRegister.Store;
using EditionRegister.UseCases.Choosing;
using EditionRegister.UseCases.People;

namespace EditionRegister.UseCases.Moves;

/// <summary>Records that the buyer gave sheets back: they belong again to whoever sold them.</summary>
public sealed class TakeBackFromBuyer(RegisterStore store)
{
    /// <param name="choice">Which sheets.</param>
    /// <param name="place">Where they are put, where they came along; null is not said.</param>
    /// <param name="given">The rest.</param>
    /// <exception cref="Domain.RefusedException">not-sold-last, and others of <see cref="ChainRefusals"/>.</exception>
    public int Run(ImpressionChoice choice, string? place, BuyersReturn given) => DeedOnChosen.Run(store, "take-back-from-buyer", choice, (writing, chosen, deed) =>
        (given with
        {
            Refund = chosen.GoWithCopy ? null : given.Refund,
            Place = place is null ? null : Places.Find(writing.Read.Book, place),
            IsHere = given.IsHere || place is not null,
            Date = given.Date.IsKnown ? given.Date : Today.Of(store),
        }).Record(chosen.Work, chosen.Sheets, deed));
}

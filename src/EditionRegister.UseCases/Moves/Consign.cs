using EditionRegister.Domain.Chains;
using EditionRegister.Domain.Dates;
using EditionRegister.Store;
using EditionRegister.UseCases.Choosing;
using EditionRegister.UseCases.People;

namespace EditionRegister.UseCases.Moves;

/// <summary>Gives sheets into consignment: they stay their owner's.</summary>
public sealed class Consign(RegisterStore store)
{
    /// <param name="choice">Which sheets.</param>
    /// <param name="to">To whom, as in the address book.</param>
    /// <param name="date">When; today when not said.</param>
    /// <param name="until">Until when.</param>
    /// <param name="rate">The consignee's share in hundredths of a per cent.</param>
    /// <param name="note">As written.</param>
    /// <param name="agreement">The agreement under which they go, as written.</param>
    public int Run(ImpressionChoice choice, string to, RecordedDate? date = null, RecordedDate? until = null, int? rate = null, string? note = null, string? agreement = null) =>
        DeedOnChosen.Run(store, "consign", choice, (writing, chosen, deed) => WhereaboutsDeeds.Consign(
            chosen.Work, chosen.Sheets, new Consignment(Persons.Find(writing.Read.Book, to), until ?? RecordedDate.None, rate, note, agreement), date ?? Today.Of(store), deed));
}

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
            chosen.Work, chosen.Sheets, Places.Find(writing.Read.Book, place), date ?? Today.Of(store), note, deed, chosen.GoWithCopy));
}

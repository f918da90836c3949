using EditionRegister.Domain.Chains;
using EditionRegister.Domain.Dates;
using EditionRegister.Store;
using EditionRegister.UseCases.Choosing;
using EditionRegister.UseCases.People;

namespace EditionRegister.UseCases.Moves;

/// <summary>Records that sheets which were lost, stolen or nobody knew where were found again.</summary>
public sealed class FindAgain(RegisterStore store)
{
    /// <param name="choice">Which sheets.</param>
    /// <param name="to">Who has them and where they lie now; neither is the maker's hands.</param>
    /// <param name="date">When; today when not said.</param>
    /// <param name="note">As written.</param>
    /// <exception cref="Domain.RefusedException">sheet-not-missing, and others of <see cref="ChainRefusals"/>.</exception>
    public int Run(ImpressionChoice choice, SentTo to, RecordedDate? date = null, string? note = null) => DeedOnChosen.Run(store, "find", choice, (writing, chosen, deed) =>
    {
        long? with = to.With is { } who ? Persons.Find(writing.Read.Book, who) : null;
        var position = to.Place is { } path ? Position.InPlace(Places.Find(writing.Read.Book, path)) with { Holder = with }
            : with is { } holder ? Position.With(holder)
            : null;
        Mishaps.Find(chosen.Work, chosen.Sheets, position, date ?? Today.Of(store), note, deed);
    });
}

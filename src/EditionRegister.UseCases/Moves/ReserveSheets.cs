using EditionRegister.Domain.Chains;
using EditionRegister.Domain.Dates;
using EditionRegister.Store;
using EditionRegister.UseCases.Choosing;
using EditionRegister.UseCases.People;

namespace EditionRegister.UseCases.Moves;

/// <summary>Keeps sheets for someone, who may be nobody named.</summary>
public sealed class ReserveSheets(RegisterStore store)
{
    /// <exception cref="Domain.RefusedException">reserved-already, not-ours-to-reserve, sheet-is-gone, sheet-is-missing or until-before-it-begins.</exception>
    public int Run(ImpressionChoice choice, string? person, RecordedDate? date = null, RecordedDate? until = null, string? note = null) =>
        DeedOnChosen.Run(store, "reserve", choice, (writing, chosen, deed) => Reservations.Reserve(
            chosen.Work, chosen.Sheets, person is null ? null : Persons.Find(writing.Read.Book, person), date ?? Today.Of(store), until ?? RecordedDate.None, note, deed));
}

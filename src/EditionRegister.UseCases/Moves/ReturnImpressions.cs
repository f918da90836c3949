using EditionRegister.Domain.Chains;
using EditionRegister.Domain.Dates;
using EditionRegister.Store;
using EditionRegister.UseCases.Choosing;
using EditionRegister.UseCases.People;

namespace EditionRegister.UseCases.Moves;

/// <summary>Takes sheets back from whoever has them.</summary>
public sealed class ReturnImpressions(RegisterStore store)
{
    /// <exception cref="Domain.RefusedException">not-with-them, not-away, and others of <see cref="ChainRefusals"/>.</exception>
    public int Run(ImpressionChoice choice, string? from, string? place, RecordedDate? date = null, string? note = null) =>
        DeedOnChosen.Run(store, "return", choice, (writing, chosen, deed) =>
        {
            long? who = from is null ? null : Persons.Find(writing.Read.Book, from);
            long? put = place is null ? null : Places.Find(writing.Read.Book, place);

            foreach (var same in chosen.Sheets.GroupBy(sheet => chosen.CopyOf?[sheet.Id].Work))
            {
                WhereaboutsDeeds.Return(chosen.Work, [.. same], who, put, date ?? Today.Of(store), note, deed, same.Key);
            }
        });
}

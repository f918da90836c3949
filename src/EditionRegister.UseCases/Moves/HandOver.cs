using EditionRegister.Domain.Chains;
using EditionRegister.Domain.Dates;
using EditionRegister.Store;
using EditionRegister.UseCases.Choosing;

namespace EditionRegister.UseCases.Moves;

/// <summary>Hands sheets to their owners: to whom they were sold or given before.</summary>
public sealed class HandOver(RegisterStore store)
{
    /// <exception cref="Domain.RefusedException">nobody-to-collect, and others of <see cref="ChainRefusals"/>.</exception>
    public int Run(ImpressionChoice choice, RecordedDate? date = null, string? note = null) => DeedOnChosen.Run(store, "hand-over", choice, (_, chosen, deed) =>
    {
        foreach (var sheet in chosen.Sheets)
        {
            if (Transfers.IsStillTheMakers(chosen.Work, sheet))
            {
                throw MoveRefusals.NobodyToCollect(sheet, WhereInWords.OwnerOf(chosen.Work, sheet));
            }

            WhereaboutsDeeds.HandOver(chosen.Work, sheet, sheet.Whose ?? Owner.Unknown, date ?? Today.Of(store), note, deed);
        }
    });
}

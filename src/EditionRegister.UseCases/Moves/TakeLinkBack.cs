using EditionRegister.Domain.Chains;
using EditionRegister.Domain.Dates;
using EditionRegister.Domain.Impressions;
using EditionRegister.Store;
using EditionRegister.UseCases.Choosing;

namespace EditionRegister.UseCases.Moves;

/// <summary>Takes the last move, or the last transfer, of sheets back where it was recorded by mistake.</summary>
public sealed class TakeLinkBack(RegisterStore store)
{
    /// <summary>Answers how many sheets it was done to.</summary>
    /// <param name="choice">Which sheets.</param>
    /// <param name="move">The last link of where it is.</param>
    /// <param name="transfer">The last link of whose it is.</param>
    /// <param name="meant">The last links as the caller saw them; null takes whichever is the last.</param>
    /// <exception cref="Domain.RefusedException">first-link-stays, chain-went-on, or a choice that finds nothing.</exception>
    public int Run(ImpressionChoice choice, bool move, bool transfer, LinksMeant? meant = null) => DeedOnChosen.Run(store, "take-link-back", choice, (_, chosen, deed) =>
    {
        foreach (var sheet in chosen.Sheets)
        {
            if (move && WentTogether(chosen, sheet, one => one.Whereabouts is [.., var last] ? (last.Kind, last.Moved, (object)last.To) : null))
            {
                LinkDeeds.TakeBackMove(sheet, deed, chosen.GoWithCopy ? null : meant?.Moves);
            }

            if (transfer && WentTogether(chosen, sheet, one => one.Ownership is [.., var last] ? (last.Kind, last.Passed, (object)last.To) : null))
            {
                LinkDeeds.TakeBackTransfer(sheet, deed, chosen.GoWithCopy ? null : meant?.Transfers);
            }
        }
    });

    /// <summary>A sheet that went with its copy takes the step back with it; a step it made alone stays.</summary>
    private static bool WentTogether(ChosenOfWork chosen, Impression sheet, Func<Impression, (string, RecordedDate, object)?> last) =>
        chosen.CopyOf is not { } copies || Equals(last(sheet), last(copies[sheet.Id].Sheet));
}

using EditionRegister.Domain.Chains;
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
            if (move)
            {
                LinkDeeds.TakeBackMove(sheet, deed, meant?.Moves);
            }

            if (transfer)
            {
                LinkDeeds.TakeBackTransfer(sheet, deed, meant?.Transfers);
            }
        }
    });
}

using EditionRegister.Domain.Chains;
using EditionRegister.Store;
using EditionRegister.UseCases.Choosing;

namespace EditionRegister.UseCases.Moves;

/// <summary>Lets sheets go that were kept for someone.</summary>
public sealed class LiftReservation(RegisterStore store)
{
    /// <exception cref="Domain.RefusedException">not-reserved.</exception>
    public int Run(ImpressionChoice choice) => DeedOnChosen.Run(store, "lift-reservation", choice, (_, chosen, deed) => Reservations.Lift(chosen.Sheets, deed));
}

using EditionRegister.Store;

namespace EditionRegister.UseCases.LookingBack;

/// <summary>Looks at the register as it stood at the end of a day that is past.</summary>
public sealed class LookBack(RegisterStore store)
{
    /// <summary>Dispose of it when done: it is held in memory.</summary>
    /// <exception cref="Domain.RefusedException">day-before-register, day-not-over, logbook-unreadable.</exception>
    public RegisterThen To(DateOnly day) => new(store, store.AsOf(day));
}

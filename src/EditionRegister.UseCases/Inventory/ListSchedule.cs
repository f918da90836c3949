using EditionRegister.Domain.Inventory;
using EditionRegister.Store;
using EditionRegister.UseCases.LookingBack;

namespace EditionRegister.UseCases.Inventory;

/// <summary>An insurance schedule as it stood on a day, as it is known now for that day, and the sheets of which the two tell different things.</summary>
public sealed record ScheduleThen(InsuranceSchedule Then, InsuranceSchedule Now, IReadOnlyList<KnownDifference> Differences);

/// <summary>Lists sheets with what they are worth by the register, for an insurer.</summary>
public sealed class ListSchedule(RegisterStore store)
{
    /// <exception cref="Domain.RefusedException">person-not-found, person-ambiguous, place-not-found, place-ambiguous.</exception>
    public InsuranceSchedule Run(ScheduleChoice choice) => store.Read(reader => ScheduleWanted.Find(reader.Book, choice).Of(reader.Works(), reader.Book));
}

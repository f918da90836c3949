using EditionRegister.Domain.Chains;
using EditionRegister.Domain.Inventory;
using EditionRegister.Domain.Works;
using EditionRegister.Store;
using EditionRegister.Store.Logbook;
using EditionRegister.Store.Reading;
using EditionRegister.UseCases.Inventory;

namespace EditionRegister.UseCases.LookingBack;

/// <summary>Where a sheet was on a day, as recorded then and as known now; null where it was, or is, not on record.</summary>
/// <param name="Code">As shown.</param>
/// <param name="Number">As the register had it.</param>
/// <param name="Title">Of its work.</param>
/// <param name="Then">As recorded then.</param>
/// <param name="Now">As known now.</param>
/// <param name="Recorded">When that was recorded, UTC, ISO 8601; null where something was taken back and nothing put in its place.</param>
public sealed record KnownDifference(string Code, string Number, string Title, string? Then, string? Now, string? Recorded);

/// <summary>What today's register tells of a day that is past.</summary>
internal sealed class KnownNow(RegisterStore now, PastRegister past)
{
    /// <param name="then">Works as they stood.</param>
    /// <param name="work">The only work asked about, or null for all.</param>
    public IReadOnlyList<KnownDifference> Differences(IEnumerable<Work> then, long? work) => now.Read(reader =>
    {
        List<KnownDifference> found = [];
        HashSet<long> met = [];

        foreach (var stood in then)
        {
            met.Add(stood.Id);
            found.AddRange(Of(reader, stood, reader.Work(stood.Id)));
        }

        foreach (var id in work is { } only ? [only] : reader.WorkIds())
        {
            found.AddRange(met.Add(id) ? Of(reader, null, reader.Work(id)) : []);
        }

        return found;
    });

    /// <summary>A choice by the names of today, since those are the ones a person types.</summary>
    /// <exception cref="Domain.RefusedException">person-not-found, person-ambiguous, place-not-found, place-ambiguous.</exception>
    public ScheduleWanted Wanted(ScheduleChoice choice) => now.Read(reader => ScheduleWanted.Find(reader.Book, choice));

    public InsuranceSchedule Schedule(ScheduleWanted wanted) => now.Read(reader => past.Store.Read(then =>
        wanted.Of(reader.Works().Select(work => ByDay(work, then.Work(work.Id)).Work), reader.Book)));

    private IEnumerable<KnownDifference> Of(Reader reader, Work? then, Work? work) => SheetThenAndNow.Of(then, work is null ? null : ByDay(work, then)).Select(one => new KnownDifference(
        one.Sheet.ShownCode, one.Work.NumberOf(one.Sheet), one.Work.ShownTitle, one.Then, one.Now, one.Entry > past.Last.N ? reader.RecordedAt(one.Entry.Value) : null));

    private WorkByDay ByDay(Work work, Work? then) => WorkByDay.Of(work, past.Day, then);
}

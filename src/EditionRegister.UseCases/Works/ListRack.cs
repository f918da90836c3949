using EditionRegister.Domain.Dates;
using EditionRegister.Domain.Works;
using EditionRegister.Store;

namespace EditionRegister.UseCases.Works;

/// <summary>A print run whose sheets are drying or still to be sorted.</summary>
/// <param name="Work">The work whole.</param>
/// <param name="Run">The run.</param>
/// <param name="Sheets">Pulls not sorted yet.</param>
public sealed record OnRack(Work Work, PrintRun Run, int Sheets);

/// <summary>Lists the print runs whose pulls lie on the rack, those that are dry first.</summary>
public sealed class ListRack(RegisterStore store)
{
    public IReadOnlyList<OnRack> Run() => store.Read(reader => (
        from work in reader.Works()
        from run in work.Runs
        let unsorted = work.Impressions.Count(sheet => sheet.Run == run.Id && sheet.Standing == "pulled")
        where unsorted > 0
        orderby run.Ready.Latest ?? run.Ready.Earliest ?? DateOnly.MaxValue, work.Id, run.Ordinal
        select new OnRack(work, run, unsorted)).ToList());

    /// <summary>Today where the register is kept.</summary>
    public DateOnly Today => DateOnly.FromDateTime(store.Time.GetLocalNow().DateTime);
}

using EditionRegister.Domain.Works;

namespace EditionRegister.Domain.Integrity;

/// <summary>The sheets of a print run come out even: started = unused + spoiled + impressions.</summary>
public sealed class SheetsBalance : IRule
{
    private const string Remedy = "Count the sheets of the run again, and correct the count that was mistyped; a count nobody made can be left unknown.";

    public string Name => nameof(SheetsBalance);

    public string Sentence => "In every print run the sheets started are those unused, those spoiled and the impressions they were cut into or made up to; and as many were held out as are recorded.";

    public string Basis => "arithmetic: started = unused + spoiled + impressions";

    public IEnumerable<Finding> Check(Work work) => work.Runs.SelectMany(run => Balance(work, run).Concat(HeldOut(work, run)));

    private IEnumerable<Finding> Balance(Work work, PrintRun run)
    {
        var impressions = work.Impressions.Count(sheet => sheet.Run == run.Id);
        var cut = SheetsCut.Of(run);
        var ended = (run.Unused ?? 0L) + (run.Spoiled ?? 0L) + cut.Sheets(impressions);
        var allCounted = run is { Unused: not null, Spoiled: not null };

        if (run.Started is { } started && (ended > started || (allCounted && (ended != started || cut.Impressions(started - (long)run.Unused! - run.Spoiled!.Value) != impressions))))
        {
            yield return this.Contradiction(
                work.SubjectOf(run),
                $"In {work.CalledRun(run)} {InWords.Count(started, "sheet was", "sheets were")} started, and {InWords.Figure(ended)} came of it: {Parts(run, impressions, cut)}.",
                Remedy);
        }
    }

    private static string Parts(PrintRun run, int impressions, SheetsCut cut) =>
        $"{Counted(run.Unused)} unused, {Counted(run.Spoiled)} spoiled, {InWords.Count(impressions, "impression", "impressions")}{Cut(impressions, cut)}";

    private static string Cut(int impressions, SheetsCut cut) => cut.IsOneToOne ? ""
        : $" from {InWords.Count(cut.Sheets(impressions), "sheet", "sheets")}, {(cut.MadeOf == 1 ? $"each cut into {InWords.Figure(cut.CutInto)}" : $"{InWords.Figure(cut.MadeOf)} to {(cut.CutInto == 1 ? "an impression" : $"{InWords.Figure(cut.CutInto)} impressions")}")}";

    private static string Counted(int? count) => count is { } n ? InWords.Figure(n) : "an unknown number";

    private IEnumerable<Finding> HeldOut(Work work, PrintRun run)
    {
        var sheets = work.Impressions.Where(sheet => sheet.Run == run.Id).ToList();
        var surely = sheets.Count(sheet => sheet.Standing == "held-out");
        var atMost = surely + sheets.Count(sheet => sheet.IsKept && work.NumberingOf(sheet)?.Kind is not { InSize: true } && sheet.Numbering is not null);

        if (run.HeldOut is { } counted && (counted < surely || counted > atMost))
        {
            yield return this.Contradiction(
                work.SubjectOf(run),
                $"In {work.CalledRun(run)} {InWords.Count(counted, "sheet was", "sheets were")} held out as proofs, and {InWords.Count(counted < surely ? surely : atMost, "impression is", "impressions are")} held out or numbered as a proof.",
                Remedy);
        }
    }
}
